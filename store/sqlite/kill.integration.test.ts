import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { exportRecord, verifyRecord } from '@clampwright/core/record';
import { beforeAll, describe, expect, it } from 'vitest';
import { openStore } from '../index.ts';
import { freshFolder, storeIn, valueOf } from '../testing/contract/folder.ts';
import { built } from '../testing/processes/build.ts';
import { hubSheet, pullNumber } from '../testing/workshop.ts';

const { id: jobId } = hubSheet('tower 3');
const KILLS = 50;
const SEED = 20_260_302;

/** Numbers in [0, 1) that are the same in each run (mulberry32, a public-domain generator, from memory). */
function numbers(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

/** Runs a process that appends, kills it, and gives the numbers that it had acknowledged. */
async function killed(program: string, folder: string, first: number, moment: Moment): Promise<readonly number[]> {
  const child = spawn(process.execPath, [program, folder, String(first)], { stdio: ['ignore', 'pipe', 'pipe'] });
  const closed = once(child, 'close');
  let said = '';
  let complaint = '';
  child.stdout.on('data', (data: Buffer) => (said += data.toString()));
  child.stderr.on('data', (data: Buffer) => (complaint += data.toString()));
  if (moment.after === 'first acknowledgement') await Promise.race([once(child.stdout, 'data'), closed]);
  const timer = setTimeout(() => child.kill('SIGKILL'), moment.ms);
  const [, signal] = await closed;
  clearTimeout(timer);
  expect({ signal, complaint }).toEqual({ signal: 'SIGKILL', complaint: '' });
  return said.split('\n').slice(0, -1).map(Number);
}

interface Moment {
  readonly after: 'start' | 'first acknowledgement';
  readonly ms: number;
}

/** By turns: while the program starts and opens the store, and while it appends. */
const momentOf = (kill: number, chance: () => number): Moment =>
  kill % 2 === 0 ? { after: 'start', ms: chance() * 500 } : { after: 'first acknowledgement', ms: chance() * 120 };

describe('a process that is killed', () => {
  let program: string;
  beforeAll(async () => {
    program = await built('append-pulls');
  });

  it(`loses no pull that it acknowledged, ${KILLS} times over, and leaves a whole chain`, async () => {
    const folder = await freshFolder();
    const chance = numbers(SEED);
    const acknowledged: number[] = [];
    for (let kill = 0; kill < KILLS; kill++) {
      acknowledged.push(...(await killed(program, folder, (acknowledged.at(-1) ?? -1) + 1, momentOf(kill, chance))));
    }
    const entries = valueOf(await (await storeIn(folder, openStore)).jobs.entries(jobId));
    const stored = new Set(entries.map(({ id }) => id));
    expect(acknowledged.length).toBeGreaterThanOrEqual(KILLS / 2);
    expect(acknowledged.filter((n) => !stored.has(pullNumber(jobId, n).id))).toEqual([]);
    expect(stored.size).toBe(entries.length);
    expect(verifyRecord(exportRecord(entries, {})).faults).toEqual([]);
  });
});
