import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';

/** A served workshop with the demo, in a folder of its own. */
export interface Served {
  readonly url: string;
  readonly pid: number;
  end(): Promise<void>;
}

const addressIn = (said: string): string | undefined => /http:\/\/127\.0\.0\.1:\d+/.exec(said)?.[0];

async function address(child: ChildProcess): Promise<string> {
  let said = '';
  for await (const piece of child.stdout ?? []) {
    said += String(piece);
    const found = addressIn(said);
    if (found !== undefined) return found;
  }
  throw new Error(`the server ended without an address: ${said}`);
}

/** Starts the command as its user does. */
export async function served(): Promise<Served> {
  const folder = mkdtempSync(path.join(tmpdir(), 'clampwright-bench-'));
  const child = spawn(process.execPath, ['cli/bin/clampwright.js', 'serve', '--data', folder, '--port', '0'], {
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  const url = await address(child);
  return {
    url,
    pid: child.pid ?? 0,
    end: async () => {
      child.kill('SIGTERM');
      await once(child, 'exit');
      rmSync(folder, { recursive: true, force: true });
    },
  };
}
