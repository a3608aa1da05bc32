import { expect, it } from 'vitest';
import { shownFigure } from './shown-figure.ts';

it('shows six digits, and every digit before the decimal sign', () => {
  expect(shownFigure(41_234.5678, 'de')).toBe('41\u202f234,6');
  expect(shownFigure(1_234_567.8, 'en')).toBe('1\u202f234\u202f568');
});

it('shows what is very small with its power of ten', () => {
  expect(shownFigure(3.0251e-6, 'fr')).toBe('3,025·10⁻⁶');
  expect(shownFigure(0, 'en')).toBe('0');
});
