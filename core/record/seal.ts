import { ed25519 } from '@noble/curves/ed25519.js';
import { bytesToHex, hexToBytes, utf8ToBytes } from '@noble/hashes/utils.js';
import { canonical } from './canonical.ts';
import { sha256Hex } from './digest.ts';
import type { Entry } from './entry.ts';
import type { Seal } from './file.ts';

/** What is signed: the head of the chain, how long it is, by which key and when. */
function sealedText(last: Entry, publicKey: string, signedAt: string): Uint8Array {
  const said = {
    format: 'clampwright-record',
    version: 1,
    jobId: last.jobId,
    entryCount: last.seq,
    headHash: last.hash,
    publicKey,
    signedAt,
  };
  return utf8ToBytes(canonical(said));
}

/**
 * Signs the chain of a closed job.
 *
 * @param last      its last entry
 * @param secretKey Ed25519 seed, 32 bytes
 * @param signedAt  UTC
 * @source RFC 8032 (Ed25519)
 */
export function sealChain(last: Entry, secretKey: Uint8Array, signedAt: string): Seal {
  const publicKey = bytesToHex(ed25519.getPublicKey(secretKey));
  const signature = bytesToHex(ed25519.sign(sealedText(last, publicKey, signedAt), secretKey));
  return { algorithm: 'Ed25519', publicKey, signedAt, signature };
}

export function sealHolds(seal: Seal, last: Entry): boolean {
  const text = sealedText(last, seal.publicKey, seal.signedAt);
  try {
    return ed25519.verify(hexToBytes(seal.signature), text, hexToBytes(seal.publicKey));
  } catch {
    // The library throws where the bytes are no point of the curve: such a seal does not hold.
    return false;
  }
}

/** Public key of a seed, hexadecimal. */
export const publicKeyOf = (secretKey: Uint8Array): string => bytesToHex(ed25519.getPublicKey(secretKey));

/** A key in a form that people can compare by eye: 8 groups of 4 from its SHA-256. */
export function keyFingerprint(publicKey: string): string {
  return (sha256Hex(publicKey).slice(0, 32).match(/.{4}/g) ?? []).join(' ');
}
