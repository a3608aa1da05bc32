import { expect, it } from 'vitest';
import { formulaIn } from './formula-in.ts';

it('writes a formula with the decimal sign of the language, arguments still apart', () => {
  expect(formulaIn('min(3.2, 4.5)·0.577', 'de')).toBe('min(3,2; 4,5)·0,577');
  expect(formulaIn('min(3.2, 4.5)', 'en')).toBe('min(3.2, 4.5)');
});
