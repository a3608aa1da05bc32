import { expect, it } from 'vitest';
import { firstLanguage } from './first-language.ts';

it('is the one that was chosen at this device', () => {
  expect(firstLanguage('fr', ['de-CH', 'en'])).toBe('fr');
});

it('is the first that the browser wants and we have', () => {
  expect(firstLanguage(null, ['pt-BR', 'de-CH', 'en'])).toBe('de');
});

it('is English where we have none of them', () => {
  expect(firstLanguage('xx', ['pt-BR'])).toBe('en');
});
