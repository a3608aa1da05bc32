import { type ChildProcessWithoutNullStreams, spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { text } from 'node:stream/consumers';
import { setTimeout as pause } from 'node:timers/promises';
import { onTestFinished } from 'vitest';
import { builtCommand } from './built.ts';

/** What a command came to. */
export interface Ran {
  /** Undefined where a signal ended it. */
  readonly code: number | undefined;
  readonly stdout: string;
  readonly stderr: string;
}

/** A command that goes on until it is ended. */
export interface Running {
  /** Waits until it has said this; gives what matched. The test's own time limit ends the waiting. */
  readonly says: (pattern: RegExp) => Promise<string>;
  readonly end: (signal?: NodeJS.Signals) => Promise<Ran>;
}

/** Where a user sits: an empty home, an empty working folder, and the command. */
export interface Place {
  readonly folder: string;
  readonly home: string;
  /** A data folder that is not there yet. */
  readonly data: string;
  /** Keeps a file in the working folder; gives its path. */
  readonly file: (name: string, content: string | Uint8Array) => string;
  readonly run: (args: readonly string[], input?: string | Uint8Array, env?: NodeJS.ProcessEnv) => Promise<Ran>;
  /** Ended when the test is finished, if it still goes on. */
  readonly start: (args: readonly string[]) => Running;
  readonly remove: () => void;
}

const command = builtCommand();
const LOOK_AGAIN_MS = 20;

/** A place that is gone when the test is finished. */
export function freshPlace(): Place {
  const place = makePlace();
  onTestFinished(place.remove);
  return place;
}

export function makePlace(): Place {
  const outer = mkdtempSync(path.join(tmpdir(), 'clampwright-cli-'));
  const inside = (name: string): string => path.join(outer, name);
  const [folder, home] = [inside('work'), inside('home')];
  for (const made of [folder, home]) mkdirSync(made);
  const begin = (args: readonly string[], env: NodeJS.ProcessEnv = {}) =>
    spawn(process.execPath, [command, ...args], {
      cwd: folder,
      env: { PATH: process.env['PATH'], HOME: home, XDG_DATA_HOME: path.join(home, 'data'), ...env },
    });
  return {
    folder,
    home,
    data: inside('data'),
    file: (name, content) => {
      const file = path.join(folder, name);
      writeFileSync(file, content);
      return file;
    },
    run: async (args, input = '', env) => {
      const child = begin(args, env);
      // A command that refuses early reads nothing.
      child.stdin.on('error', () => undefined).end(input);
      return ranOf(child);
    },
    start: (args) => runningOn(begin(args)),
    remove: () => rmSync(outer, { recursive: true }),
  };
}

async function ranOf(child: ChildProcessWithoutNullStreams): Promise<Ran> {
  const [stdout, stderr] = await Promise.all([text(child.stdout), text(child.stderr), once(child, 'close')]);
  return { code: child.exitCode ?? undefined, stdout, stderr };
}

function runningOn(child: ChildProcessWithoutNullStreams): Running {
  let said = '';
  const ran = ranOf(child);
  for (const stream of [child.stdout, child.stderr]) stream.on('data', (chunk: Buffer) => (said += chunk.toString()));
  onTestFinished(async () => {
    child.kill();
    await ran;
  });
  return {
    says: async (pattern) => {
      for (;;) {
        const found = pattern.exec(said);
        if (found) return found[1] ?? found[0];
        if (child.exitCode !== null) throw new Error(`it ended and said: ${said}`);
        await Promise.race([pause(LOOK_AGAIN_MS), ran]);
      }
    },
    end: (signal = 'SIGTERM') => {
      child.kill(signal);
      return ran;
    },
  };
}
