import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import { canonical } from './canonical.ts';

/** SHA-256 (FIPS 180-4) of a text in UTF-8, hexadecimal. */
export const sha256Hex = (text: string): string => bytesToHex(sha256(utf8ToBytes(text)));

/** SHA-256 of a value's canonical form, hexadecimal. */
export const digestOf = (value: unknown): string => sha256Hex(canonical(value));
