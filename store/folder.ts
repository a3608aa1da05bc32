import { mkdir, open } from 'node:fs/promises';
import { dirname, resolve } from 'node:path';

/** Makes the folder, for its owner alone, so that its name outlives a power cut. */
export async function makeFolder(folder: string): Promise<void> {
  const first = await mkdir(folder, { recursive: true, mode: 0o700 });
  if (first === undefined) return;
  const outermost = dirname(resolve(first));
  for (let at = resolve(folder); at !== outermost; at = dirname(at)) await flushNames(dirname(at));
}

/** Makes names that were written into a folder durable. Windows opens no folders and needs none of this. */
export async function flushNames(folder: string): Promise<void> {
  if (process.platform === 'win32') return;
  const handle = await open(folder, 'r');
  try {
    await handle.sync();
  } finally {
    await handle.close();
  }
}
