import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { exportRecord, verifyRecord } from '@clampwright/core/record';
import { describe, expect, it } from 'vitest';
import { openStore } from '../index.ts';
import { freshFolder, storeIn, valueOf } from '../testing/contract/folder.ts';
import { built } from '../testing/processes/build.ts';
import { hubSheet, pullNumber } from '../testing/workshop.ts';

const { id: jobId } = hubSheet('tower 3');
const PULLS = 150;

async function appends(program: string, folder: string, first: number): Promise<void> {
  const child = spawn(process.execPath, [program, folder, String(first), String(PULLS)], {
    stdio: ['ignore', 'ignore', 'inherit'],
  });
  const [code] = await once(child, 'close');
  expect(code).toBe(0);
}

describe('two processes on one data folder', () => {
  it('append to one job at once, and neither loses a pull nor waits for ever', async () => {
    const folder = await freshFolder();
    const program = await built('append-pulls');
    await Promise.all([appends(program, folder, 0), appends(program, folder, PULLS)]);
    const entries = valueOf(await (await storeIn(folder, openStore)).jobs.entries(jobId));
    const stored = new Set(entries.map(({ id }) => id));
    expect(Array.from({ length: 2 * PULLS }, (_, n) => n).filter((n) => !stored.has(pullNumber(jobId, n).id))).toEqual(
      [],
    );
    expect(entries).toHaveLength(2 + 2 * PULLS);
    expect(verifyRecord(exportRecord(entries, {})).faults).toEqual([]);
  });
});
