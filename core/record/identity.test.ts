import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { sha256Hex } from './digest.ts';
import { uuidV7, uuidV8 } from './identity.ts';

const FORM = /^[0-9a-f]{8}-[0-9a-f]{4}-[78][0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/;

describe('identities', () => {
  // RFC 9562, appendix A.6: example of a UUIDv7 value.
  it('makes the example of RFC 9562', () => {
    const random = Uint8Array.from([0x0c, 0xc3, 0x18, 0xc4, 0xdc, 0x0c, 0x0c, 0x07, 0x39, 0x8f]);
    expect(uuidV7(0x017f22e279b0, random)).toBe('017f22e2-79b0-7cc3-98c4-dc0c0c07398f');
  });

  it('sorts by time', () => {
    const moment = fc.integer({ min: 0, max: 2 ** 45 });
    const random = fc.uint8Array({ minLength: 10, maxLength: 10 });
    fc.assert(
      fc.property(moment, moment, random, (a, b, bytes) => {
        expect(uuidV7(a, bytes) < uuidV7(b, bytes)).toBe(a < b);
        expect(uuidV7(a, bytes)).toMatch(FORM);
      }),
    );
  });

  it('gives the same content the same identity', () => {
    expect(uuidV8(sha256Hex('pull'))).toBe(uuidV8(sha256Hex('pull')));
    expect(uuidV8(sha256Hex('pull'))).not.toBe(uuidV8(sha256Hex('another')));
    expect(uuidV8(sha256Hex('pull'))).toMatch(FORM);
  });
});
