import { describe, expect, it } from 'vitest';
import { LANGUAGES } from '../quantity/language.ts';
import { sayDate, sayInstant } from './dates.ts';

describe('sayDate', () => {
  // against the Unicode CLDR, as the platform's Intl has it
  it.each(LANGUAGES)('writes every month out as the CLDR does, in %s', (language) => {
    const format = new Intl.DateTimeFormat(language === 'en' ? 'en-GB' : language, {
      dateStyle: 'long',
      timeZone: 'UTC',
    });
    for (let month = 1; month <= 12; month++) {
      const iso = `2026-${String(month).padStart(2, '0')}-14`;
      expect(sayDate(iso, language)).toBe(format.format(new Date(iso)));
    }
  });

  it('writes the first of the month as French does', () => {
    expect(sayDate('2026-05-01', 'fr')).toBe('1er mai 2026');
  });
});

describe('sayInstant', () => {
  it('says that it is UTC', () => {
    expect(sayInstant('2026-03-04T10:11:12.345Z', 'de')).toBe('4. März 2026, 10:11:12 UTC');
  });
});
