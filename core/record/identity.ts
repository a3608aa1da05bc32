import { bytesToHex } from '@noble/hashes/utils.js';

const grouped = (hex: string): string =>
  `${hex.slice(0, 8)}-${hex.slice(8, 12)}-${hex.slice(12, 16)}-${hex.slice(16, 20)}-${hex.slice(20, 32)}`;

function stamped(bytes: Uint8Array, version: number): string {
  bytes[6] = (bytes[6]! & 0x0f) | (version << 4);
  bytes[8] = (bytes[8]! & 0x3f) | 0x80;
  return grouped(bytesToHex(bytes));
}

/**
 * Identity made where the thing is made, also offline; sorts by time.
 *
 * @param nowMs  Unix time, ms
 * @param random at least 10 random bytes
 * @source RFC 9562, 5.7 (UUID version 7)
 */
export function uuidV7(nowMs: number, random: Uint8Array): string {
  if (random.length < 10) throw new RangeError('an identity wants 10 random bytes');
  const bytes = new Uint8Array(16);
  for (let i = 0; i < 6; i++) bytes[i] = Math.floor(nowMs / 2 ** (8 * (5 - i))) % 256;
  bytes.set(random.subarray(0, 10), 6);
  return stamped(bytes, 7);
}

/**
 * Identity that follows from content: the same content gives the same one.
 *
 * @param digestHex a SHA-256 in hexadecimal
 * @source RFC 9562, 5.8 (UUID version 8)
 */
export function uuidV8(digestHex: string): string {
  const variant = VARIANT[Number.parseInt(digestHex.charAt(16), 16) % 4];
  return grouped(`${digestHex.slice(0, 12)}8${digestHex.slice(13, 16)}${variant}${digestHex.slice(17, 32)}`);
}

/** First digit of the variant of RFC 9562 (binary 10xx), by its two free bits. */
const VARIANT = '89ab';
