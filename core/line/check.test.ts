import { expect, it } from 'vitest';
import { checkOf } from './check.ts';

it('gives the catalogued check value of CRC-16/IBM-3740', () => {
  // Catalogue of parametrised CRC algorithms: check over "123456789" (from memory).
  expect(checkOf('123456789')).toBe('29B1');
});
