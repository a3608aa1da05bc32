import { mkdir } from 'node:fs/promises';
import { join } from 'node:path';
import { canonical, type Entry, fold } from '@clampwright/core/record';
import { openStore, type Store } from '@clampwright/store';
import { deciding, firstEntries, hubSheet, pullNumber } from '@clampwright/store/testing';
import BetterSqlite from 'better-sqlite3';
import { median } from './median.ts';
import type { BenchResult } from './result.ts';
import { inScratchFolder } from './scratch-folder.ts';

const FEW = 10_000;
const MANY = 1_000_000;
const PULLS_A_NEIGHBOUR = 500;
/** The job was worked on now and then while its neighbours were. */
const VISITS = 10;
const PULLS_A_VISIT = 20;
const REPEATS = 25;

const sheet = hubSheet('bench');

async function opened(folder: string): Promise<Store> {
  const store = await openStore(folder);
  if (!store.ok) throw new Error(JSON.stringify(store.failure));
  return store.value;
}

async function workOnJob(folder: string, visit: number): Promise<void> {
  const store = await opened(folder);
  await store.jobs.open(firstEntries(sheet));
  for (let n = visit * PULLS_A_VISIT; n < (visit + 1) * PULLS_A_VISIT; n++) {
    const appended = await store.jobs.append(sheet.id, deciding(pullNumber(sheet.id, n), 10 + n));
    if (!appended.ok) throw new Error(JSON.stringify(appended.failure));
  }
  await store.close();
}

/** An identity that sorts by time, as real ones do. */
const identityOf = (kind: string, n: number): string =>
  `01900000-${kind}-7000-8000-${n.toString(16).padStart(12, '0')}`;

/** Neighbours are put into the tables directly: a million pulls through the front door take too long. */
function addNeighbours(folder: string, first: number, count: number, sample: Entry): void {
  const db = new BetterSqlite(join(folder, 'clampwright.sqlite'));
  db.pragma('synchronous = off');
  const job = db.prepare(
    'insert into jobs select ?, demo, title, asset_name, asset_location, status, done, total, retorques, opened_at, last_at, last_seq, last_hash from jobs where id = ?',
  );
  const insert = db.prepare('insert into entries (job_id, seq, id, entry) values (?, ?, ?, ?)');
  const fill = db.transaction((from: number, to: number) => {
    for (let n = from; n < to; n++) {
      const jobId = identityOf('000a', Math.floor(n / PULLS_A_NEIGHBOUR));
      const id = identityOf('000b', n);
      if (n % PULLS_A_NEIGHBOUR === 0) job.run(jobId, sheet.id);
      insert.run(jobId, (n % PULLS_A_NEIGHBOUR) + 1, id, canonical({ ...sample, jobId, id }));
    }
  });
  for (let n = first; n < first + count; n += PULLS_A_NEIGHBOUR) fill(n, n + PULLS_A_NEIGHBOUR);
  db.close();
}

async function filled(folder: string, neighbours: number): Promise<void> {
  await mkdir(folder);
  await workOnJob(folder, 0);
  const store = await opened(folder);
  const entries = await store.jobs.entries(sheet.id);
  await store.close();
  const sample = entries.ok ? entries.value.at(-1) : undefined;
  if (!sample) throw new Error('no entry to take as a sample');
  for (let visit = 1; visit < VISITS; visit++) {
    const share = neighbours / (VISITS - 1) / PULLS_A_NEIGHBOUR;
    const from = Math.round((visit - 1) * share) * PULLS_A_NEIGHBOUR;
    addNeighbours(folder, from, Math.round(visit * share) * PULLS_A_NEIGHBOUR - from, sample);
    await workOnJob(folder, visit);
  }
}

/** From a store that has just been opened to the state of the job, ms. */
async function timeToOpen(folder: string): Promise<number> {
  const store = await opened(folder);
  const startMs = performance.now();
  const entries = await store.jobs.entries(sheet.id);
  if (!entries.ok) throw new Error(JSON.stringify(entries.failure));
  const state = fold(entries.value);
  const elapsedMs = performance.now() - startMs;
  await store.close();
  if (state.lastSeq !== 2 + VISITS * PULLS_A_VISIT) throw new Error('the job is not whole');
  return elapsedMs;
}

/** Time to open a job of 200 pulls among a million others, beside the same job among ten thousand. */
export function run(): Promise<BenchResult[]> {
  return inScratchFolder(async (scratch) => {
    const [few, many] = [join(scratch, 'few'), join(scratch, 'many')];
    process.stderr.write(`  laying down ${MANY.toLocaleString('en')} pulls …\n`);
    await filled(few, FEW);
    await filled(many, MANY);
    const pairs = [];
    for (let n = -5; n < REPEATS; n++) {
      const pair = { peer: await timeToOpen(few), ours: await timeToOpen(many) };
      if (n >= 0) pairs.push(pair);
    }
    return [
      {
        name: 'open a job among a million pulls',
        ours: median(pairs.map(({ ours }) => ours)),
        peer: median(pairs.map(({ peer }) => peer)),
        unit: 'ms',
        ratio: median(pairs.map(({ ours, peer }) => ours / peer)),
        note: `Peer: the same job of ${VISITS * PULLS_A_VISIT} pulls among ${FEW.toLocaleString('en')}. Read, parsed and folded; medians of ${REPEATS} runs by turns; lower is faster.`,
      },
    ];
  });
}
