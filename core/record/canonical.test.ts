import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { canonical } from './canonical.ts';

describe('canonical', () => {
  // RFC 8785, 3.2.2: the example object of the standard, and its canonical form in 3.2.3.
  it('writes the example of RFC 8785 as the standard prints it', () => {
    const example: unknown = JSON.parse(
      String.raw`{"numbers": [333333333.33333329, 1E30, 4.50, 2e-3, 0.000000000000000000000000001],
      "string": "\u20ac$\u000F\u000aA'\u0042\u0022\u005c\\\"\/", "literals": [null, true, false]}`,
    );
    expect(canonical(example)).toBe(
      '{"literals":[null,true,false],"numbers":[333333333.3333333,1e+30,4.5,0.002,1e-27],"string":"€$\\u000f\\nA\'B\\"\\\\\\\\\\"/"}',
    );
  });

  // RFC 8785, 3.2.3: the sorting example.
  it('sorts names by UTF-16 code units', () => {
    const names = { '\u20ac': 1, '\r': 2, '\ufb33': 3, '1': 4, '\ud83d\ude00': 5, '\u0080': 6, '\u00f6': 7 };
    expect(Object.values(JSON.parse(canonical(names)))).toHaveLength(7);
    expect([...canonical(names).matchAll(/:(\d)/g)].map((match) => match[1]).join('')).toBe('2467153');
  });

  it('does not depend on the order of members, be they few or many', () => {
    const dictionary = fc.dictionary(fc.string({ unit: 'grapheme' }), fc.jsonValue({ maxDepth: 1 }), { size: '+1' });
    fc.assert(
      fc.property(dictionary, (value) => {
        const reversed = Object.fromEntries(Object.entries(value).toReversed());
        expect(canonical(reversed)).toBe(canonical(value));
      }),
    );
  });

  it('reads back as the same value', () => {
    fc.assert(
      fc.property(fc.jsonValue({ stringUnit: 'grapheme' }), (value) => {
        expect(JSON.parse(canonical(value))).toEqual(JSON.parse(JSON.stringify(value)));
      }),
    );
  });

  it('leaves out members that are undefined', () => {
    expect(canonical({ a: undefined, b: 1 })).toBe('{"b":1}');
  });

  it('refuses numbers that are not finite, and lone surrogates', () => {
    expect(() => canonical({ a: Number.NaN })).toThrow(RangeError);
    expect(() => canonical('\ud800')).toThrow(RangeError);
  });
});
