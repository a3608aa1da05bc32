import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { LANGUAGES, type Language } from './language.ts';
import { readNumber } from './read-number.ts';

fc.configureGlobal({ seed: 24 });

const refusal = (text: string, language: Language) => {
  const read = readNumber(text, language, 'target');
  return read.ok || read.failure.kind !== 'invalid' ? undefined : read.failure;
};

describe('readNumber', () => {
  it.each<[string, Language, number]>([
    ['85', 'en', 85],
    ['12.5', 'en', 12.5],
    ['1.234', 'en', 1.234],
    ['1,234.5', 'en', 1234.5],
    ['1,234,567', 'en', 1_234_567],
    ['.5', 'en', 0.5],
    ['12,5', 'de', 12.5],
    ['1,234', 'de', 1.234],
    ['1.234,5', 'de', 1234.5],
    ['1.234.567', 'de', 1_234_567],
    ['1,234', 'fr', 1.234],
    ['1\u202f234,5', 'fr', 1234.5],
    ['1\u00a0234', 'fr', 1234],
    ['12 345', 'fr', 12_345],
    ['1,234', 'es', 1.234],
    ['12 345,75', 'es', 12_345.75],
    [' +7 ', 'en', 7],
    ['-3.2', 'en', -3.2],
    ['\u22123,2', 'de', -3.2],
    ['0,234', 'de', 0.234],
    ['007', 'en', 7],
  ])('reads “%s” in %s', (text, language, value) => {
    expect(readNumber(text, language)).toEqual({ ok: true, value });
  });

  it.each<[string, Language, string, string]>([
    ['1,234', 'en', '1234', '1.234'],
    ['1.234', 'de', '1234', '1,234'],
    ['1.234', 'es', '1234', '1,234'],
    ['-12,345', 'en', '12345', '12.345'],
  ])('refuses “%s” in %s, which two people read differently', (text, language, plain, decimal) => {
    const failure = refusal(text, language);
    expect(failure?.field).toBe('target');
    expect(failure?.message).toContain(plain);
    expect(failure?.expected).toContain(decimal);
  });

  it.each<[string, Language, string]>([
    ['12,5', 'en', '12.5'],
    ['0,234', 'en', '0.234'],
    ['12.5', 'de', '12,5'],
    ['1.234', 'fr', '1,234'],
    ['12.75', 'es', '12,75'],
  ])('refuses the other decimal sign in “%s” (%s) and shows how to write it', (text, language, expected) => {
    expect(refusal(text, language)).toMatchObject({ expected });
  });

  it.each<[string, Language]>([
    ['1,23,456', 'en'],
    ['1,2345', 'en'],
    ['12,34.5', 'en'],
    ['1234,567.8', 'en'],
    [',123', 'en'],
    ['1,234 567', 'en'],
    ['1.2.3', 'en'],
    ['1 23', 'fr'],
    ['1,5,2', 'fr'],
    ['5.', 'en'],
    ['.', 'en'],
    ['', 'de'],
    ['-', 'en'],
    ['+-5', 'en'],
    ['1e3', 'en'],
    ['0x10', 'en'],
    ['Infinity', 'en'],
    ['NaN', 'en'],
    ['85 N·m', 'en'],
    ['١٢', 'en'],
    ['9'.repeat(41), 'en'],
  ])('refuses “%s” in %s', (text, language) => {
    expect(refusal(text, language)?.message).toMatch(/\w/);
  });

  it('answers for any text and never with a number that is not finite', () => {
    fc.assert(
      fc.property(fc.string(), fc.constantFrom(...LANGUAGES), (text, language) => {
        const read = readNumber(text, language);
        expect(!read.ok || Number.isFinite(read.value)).toBe(true);
      }),
    );
  });

  it('reads digits with at most one sign of the language as the number they spell', () => {
    const text = fc.tuple(fc.nat(999_999), fc.stringMatching(/^\d{1,6}$/));
    fc.assert(
      fc.property(text, fc.constantFrom(...LANGUAGES), ([whole, fraction], language) => {
        const sign = language === 'en' ? '.' : ',';
        expect(readNumber(`${whole}${sign}${fraction}`, language)).toEqual({
          ok: true,
          value: Number(`${whole}.${fraction}`),
        });
      }),
    );
  });
});
