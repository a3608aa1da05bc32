import { createHash } from 'node:crypto';
import * as fc from 'fast-check';
import { expect, it } from 'vitest';
import { sha256Hex } from './digest.ts';

// FIPS 180-4, example of NIST for the message "abc".
it('digests the example of NIST', () => {
  expect(sha256Hex('abc')).toBe('ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad');
});

it('agrees with the cryptography of the platform', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'grapheme' }), (text) => {
      expect(sha256Hex(text)).toBe(createHash('sha256').update(text).digest('hex'));
    }),
  );
});
