import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { z } from 'zod';

/** A served workshop with the demo, in a folder of its own. */
export interface Served {
  readonly url: string;
  readonly pid: number;
  /** What it holds once everything that nobody needs is thrown away, MB. */
  heapMb(): Promise<number>;
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

const HEAP_ON_REQUEST = fileURLToPath(new URL('heap-on-request.js', import.meta.url));
const heapSchema = z.object({ heapMb: z.number() });

/** Starts the command as its user does, except that it can be asked for its heap. */
export async function served(): Promise<Served> {
  const folder = mkdtempSync(path.join(tmpdir(), 'clampwright-bench-'));
  const command = ['cli/bin/clampwright.js', 'serve', '--data', folder, '--port', '0'];
  const child = spawn(process.execPath, ['--expose-gc', '--import', HEAP_ON_REQUEST, ...command], {
    stdio: ['ignore', 'pipe', 'inherit', 'ipc'],
  });
  const url = await address(child);
  return {
    url,
    pid: child.pid ?? 0,
    heapMb: async () => {
      const told = once(child, 'message');
      child.send('heap');
      return heapSchema.parse((await told)[0]).heapMb;
    },
    end: async () => {
      child.kill('SIGTERM');
      await once(child, 'exit');
      rmSync(folder, { recursive: true, force: true });
    },
  };
}
