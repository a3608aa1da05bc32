import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readDecimal } from './decimal.ts';

const messageOf = (text: string, sign: 'comma' | 'point') => {
  const read = readDecimal(text, sign, 'torque');
  return read.ok || read.failure.kind !== 'invalid' ? undefined : read.failure.message;
};

describe('readDecimal', () => {
  it('reads every decimal back, with either sign', () => {
    const figure = fc.tuple(fc.boolean(), fc.nat(9_999_999), fc.stringMatching(/^\d{0,8}$/));
    fc.assert(
      fc.property(figure, fc.constantFrom('comma', 'point'), ([negative, whole, fraction], sign) => {
        const plain = `${negative ? '-' : ''}${whole}${fraction === '' ? '' : `.${fraction}`}`;
        const text = sign === 'comma' ? plain.replace('.', ',') : plain;
        expect(readDecimal(` ${text} `, sign, 'torque')).toEqual({ ok: true, value: Number(plain) });
      }),
    );
  });

  it.each([
    ['85.4', 'comma', 'has a point'],
    ['85,4', 'point', 'has a comma'],
    ['1.234', 'comma', 'has a point'],
    ['1.234,5', 'comma', 'digits in groups'],
    ['1 234,5', 'comma', 'digits in groups'],
    ['1,234.5', 'point', 'digits in groups'],
    ['', 'point', 'no figure'],
    ['ok', 'point', 'no figure'],
    ['1e3', 'point', 'no figure'],
    ['85.4 Nm', 'point', 'no figure'],
    ['NaN', 'point', 'no figure'],
    ['.5', 'point', 'no figure|digits'],
    ['9'.repeat(41), 'point', 'More than 40'],
  ] as const)('refuses “%s” with a decimal %s', (text, sign, why) => {
    expect(messageOf(text, sign)).toMatch(new RegExp(why));
  });

  it('takes the typographic minus', () => {
    expect(readDecimal('\u22123,5', 'comma', 'torque')).toEqual({ ok: true, value: -3.5 });
  });
});
