import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { LANGUAGES } from './language.ts';
import { readNumber } from './read-number.ts';
import { showNumber } from './show-number.ts';
import { showAngle, showTorque } from './show-quantity.ts';

fc.configureGlobal({ seed: 24 });

const size = fc.double({ min: 1e-9, max: 1e14, noNaN: true });
const anyFigure = fc.oneof(
  size,
  size.map((value) => -value),
  fc.constant(0),
);
const language = fc.constantFrom(...LANGUAGES);

describe('showNumber', () => {
  it('is read back as the very number, in every language', () => {
    fc.assert(
      fc.property(anyFigure, language, (value, inLanguage) => {
        expect(readNumber(showNumber(value, inLanguage), inLanguage)).toEqual({ ok: true, value });
      }),
    );
  });

  it('is read back as the figure that was shown when it was rounded', () => {
    fc.assert(
      fc.property(anyFigure, language, fc.nat(6), (value, inLanguage, decimals) => {
        const shown = readNumber(showNumber(value, inLanguage, { decimals }), inLanguage);
        expect(shown.ok && Math.abs(shown.value - value)).toBeLessThanOrEqual(
          0.5 * 10 ** -decimals + Math.abs(value) * 1e-15,
        );
      }),
    );
  });

  it.each([
    [1234.5, 'en', {}, '1234.5'],
    [12345.678, 'en', { decimals: 2 }, '12\u202f345.68'],
    [12345.678, 'de', { decimals: 2 }, '12\u202f345,68'],
    [1234567, 'fr', {}, '1\u202f234\u202f567'],
    [-3.25, 'es', { decimals: 1 }, '\u22123,3'],
    [-0.01, 'en', { decimals: 1 }, '0.0'],
    [0.000012, 'en', {}, '0.000012'],
    [1.5e21, 'en', { decimals: 2 }, '1\u202f500\u202f000\u202f000\u202f000\u202f000\u202f000\u202f000'],
    [85, 'en', { significant: 3 }, '85.0'],
    [9.996, 'en', { significant: 3 }, '10.0'],
    [123456, 'en', { significant: 3 }, '123\u202f456'],
    [0.0456, 'en', { significant: 2 }, '0.046'],
    [Number.NaN, 'en', {}, '–'],
  ] as const)('shows %d in %s with %o', (value, inLanguage, digits, text) => {
    expect(showNumber(value, inLanguage, digits)).toBe(text);
  });
});

describe('showTorque and showAngle', () => {
  it.each([
    [84.72, 'N·m', 'en', '84.7\u00a0N·m'],
    [84.72, 'N·m', 'fr', '84,7\u00a0N·m'],
    [85, 'lbf·ft', 'en', '62.7\u00a0lbf·ft'],
    [0.4567, 'N·m', 'en', '0.457\u00a0N·m'],
    [4.2, 'N·m', 'de', '4,20\u00a0N·m'],
    [1356.4, 'N·m', 'en', '1356\u00a0N·m'],
    [13564, 'N·m', 'fr', '13\u202f564\u00a0N·m'],
  ] as const)('shows %d N·m in %s (%s)', (torqueNm, unit, inLanguage, text) => {
    expect(showTorque(torqueNm, unit, inLanguage)).toBe(text);
  });

  it('shows an angle to a tenth of a degree', () => {
    expect([showAngle(61.54, 'en'), showAngle(180, 'fr')]).toEqual(['61.5°', '180,0°']);
  });
});
