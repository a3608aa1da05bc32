import { randomBytes } from 'node:crypto';
import { open, readFile, rename } from 'node:fs/promises';
import { join } from 'node:path';
import { type Failure, failed, ok, type Result } from '@clampwright/core/failure';
import { publicKeyOf } from '@clampwright/core/record';
import { type Engine, transact } from './engine.ts';
import { flushNames } from './folder.ts';
import { readSetting, writeSetting } from './settings.ts';

/** The key that seals records: Ed25519 (RFC 8032). */
export interface SigningKey {
  /** The secret, 32 bytes. */
  readonly seed: Uint8Array;
  /** 32 bytes, hexadecimal. */
  readonly publicKey: string;
}

const FILE = 'signing-key';
const SETTING = 'signing-public-key';
const SEED_BYTES = 32;

/**
 * The key of a data folder, made when it is first wanted. It lies in a file of its own, readable by its owner alone;
 * the database remembers the public half, so that a lost or exchanged file is noticed and never made anew in silence.
 */
export async function signingKeyIn(engine: Engine, folder: string): Promise<Result<SigningKey>> {
  const path = join(folder, FILE);
  return transact(engine, async (trx) => {
    const known = await readSetting(trx, SETTING);
    const seed = (await readSeed(path)) ?? (known === undefined ? await makeSeed(folder, path) : undefined);
    if (!seed) return failed(lost(path));
    if (seed.length !== SEED_BYTES) return failed(damaged(path));
    const key = { seed, publicKey: publicKeyOf(seed) };
    if (known === undefined) await writeSetting(trx, SETTING, key.publicKey);
    return known === undefined || known === key.publicKey ? ok(key) : failed(exchanged(path));
  });
}

async function readSeed(path: string): Promise<Uint8Array | undefined> {
  return readFile(path).catch((error: unknown) => {
    if (error instanceof Error && 'code' in error && error.code === 'ENOENT') return undefined;
    throw error;
  });
}

/** Written whole under another name first: a key that was cut off would be lost for good. */
async function makeSeed(folder: string, path: string): Promise<Uint8Array> {
  const seed = randomBytes(SEED_BYTES);
  const file = await open(`${path}.new`, 'w', 0o600);
  try {
    await file.writeFile(seed);
    await file.sync();
  } finally {
    await file.close();
  }
  await rename(`${path}.new`, path);
  await flushNames(folder);
  return seed;
}

const RESTORE =
  'Put the file back from a backup of this data folder. Records sealed before can be verified without it.';

const unusable = (message: string): Failure => ({ kind: 'unavailable', message, remedy: RESTORE });
const lost = (path: string): Failure => unusable(`The signing key ${path} is missing; nothing can be sealed.`);
const damaged = (path: string): Failure => unusable(`The signing key ${path} is damaged; nothing can be sealed.`);
const exchanged = (path: string): Failure =>
  unusable(`The signing key ${path} is not the one that this database was sealed with; nothing can be sealed.`);
