import { execFile } from 'node:child_process';
import { accessSync, constants } from 'node:fs';
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { delimiter, join } from 'node:path';
import { promisify } from 'node:util';

const execute = promisify(execFile);

function isProgram(path: string): boolean {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

/** Whether a program is on the path. */
export const has = (program: string): boolean =>
  (process.env['PATH'] ?? '').split(delimiter).some((folder) => isProgram(join(folder, program)));

/** Those that are missing, in one sentence for the name of the tests that need them; empty when all are there. */
export function missing(programs: Readonly<Record<string, string>>): string {
  const absent = Object.entries(programs).filter(([program]) => !has(program));
  const packages = [...new Set(absent.map(([, debian]) => debian))];
  return absent.length === 0 ? '' : ` (skipped: install ${packages.join(', ')})`;
}

/** Output of a program. */
export async function output(program: string, args: readonly string[]): Promise<string> {
  const { stdout } = await execute(program, args, { maxBuffer: 64 * 1024 * 1024 });
  return stdout;
}

/** Writes bytes to a file of a new folder and hands its path over; the folder is gone afterwards. */
export async function withFile<T>(
  name: string,
  bytes: Uint8Array | string,
  use: (path: string) => Promise<T>,
): Promise<T> {
  const folder = await mkdtemp(join(tmpdir(), 'clampwright-report-'));
  try {
    await writeFile(join(folder, name), bytes);
    return await use(join(folder, name));
  } finally {
    await rm(folder, { recursive: true });
  }
}
