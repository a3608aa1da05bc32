import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Failure, Result } from '@clampwright/core/failure';
import { onTestFinished } from 'vitest';
import type { Store } from '../../store.ts';

/** Opens the engine under test on a folder. */
export type OpenStore = (folder: string) => Promise<Result<Store>>;

/** A folder of its own for one test. */
export async function freshFolder(): Promise<string> {
  const folder = await mkdtemp(join(tmpdir(), 'clampwright-store-'));
  onTestFinished(() => rm(folder, { recursive: true, force: true }));
  return folder;
}

/** A store on a folder, closed when the test is over. */
export async function storeIn(folder: string, open: OpenStore): Promise<Store> {
  const store = valueOf(await open(folder));
  onTestFinished(() => store.close());
  return store;
}

export const freshStore = async (open: OpenStore): Promise<Store> => storeIn(await freshFolder(), open);

export function valueOf<T>(result: Result<T>): T {
  if (!result.ok) throw new Error(JSON.stringify(result.failure));
  return result.value;
}

export function failureOf(result: Result<unknown>): Failure {
  if (result.ok) throw new Error(`went well: ${JSON.stringify(result.value)}`);
  return result.failure;
}
