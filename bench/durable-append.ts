import { join } from 'node:path';
import type { Entry } from '@clampwright/core/record';
import { canonical } from '@clampwright/core/record';
import { openStore, type Store } from '@clampwright/store';
import { deciding, firstEntries, hubSheet, pullNumber } from '@clampwright/store/testing';
import BetterSqlite from 'better-sqlite3';
import { median } from './median.ts';
import type { BenchResult } from './result.ts';
import { inScratchFolder } from './scratch-folder.ts';

const PULLS = 1000;
const REPEATS = 9;
/** A server that has run for a while is compiled; a fresh one is not. */
const WARM_UPS = 4;

const sheet = hubSheet('bench');

async function openedStore(folder: string): Promise<Store> {
  const store = await openStore(folder);
  if (!store.ok) throw new Error(JSON.stringify(store.failure));
  const opened = await store.value.jobs.open(firstEntries(sheet));
  if (!opened.ok) throw new Error(JSON.stringify(opened.failure));
  return store.value;
}

/** Judges, chains and stores pulls, each acknowledged before the next; gives back pulls a second and what was stored. */
async function ours(folder: string): Promise<{ readonly perSecond: number; readonly entries: readonly Entry[] }> {
  const store = await openedStore(folder);
  const pulls = Array.from({ length: PULLS }, (_, n) => pullNumber(sheet.id, n));
  const entries: Entry[] = [];
  const startMs = performance.now();
  for (const [n, pull] of pulls.entries()) {
    const appended = await store.jobs.append(sheet.id, deciding(pull, 10 + n), { lookUp: [pull.id] });
    if (!appended.ok || appended.value.already) throw new Error(`pull ${n} was not added`);
    entries.push(...appended.value.entries);
  }
  const perSecond = (1000 * PULLS) / (performance.now() - startMs);
  await store.close();
  return { perSecond, entries };
}

/** Inserts the very same rows, each in a transaction of its own, and does nothing else. */
function bareInserts(folder: string, entries: readonly Entry[]): number {
  const db = new BetterSqlite(join(folder, 'bare.sqlite'));
  db.pragma('journal_mode = wal');
  db.pragma('synchronous = full');
  db.pragma('foreign_keys = on');
  db.exec(
    'create table entries (arrival integer primary key autoincrement, job_id text not null, seq integer not null, id text not null unique, entry text not null, unique (job_id, seq))',
  );
  const insert = db.prepare('insert into entries (job_id, seq, id, entry) values (?, ?, ?, ?)');
  const rows = entries.map((entry) => [entry.jobId, entry.seq, entry.id, canonical(entry)]);
  const startMs = performance.now();
  for (const row of rows) insert.run(...row);
  const perSecond = (1000 * rows.length) / (performance.now() - startMs);
  db.close();
  return perSecond;
}

const pair = () =>
  inScratchFolder(async (folder) => {
    const { perSecond, entries } = await ours(folder);
    return { ours: perSecond, peer: bareInserts(folder, entries) };
  });

/** Durable appends a second beside a bare insert loop of the database library under the same settings. */
export async function run(): Promise<BenchResult[]> {
  for (let n = 0; n < WARM_UPS; n++) await pair();
  const pairs = [];
  for (let n = 0; n < REPEATS; n++) pairs.push(await pair());
  return [
    {
      name: 'durable append',
      ours: median(pairs.map(({ ours }) => ours)),
      peer: median(pairs.map(({ peer }) => peer)),
      unit: 'pulls/s',
      ratio: median(pairs.map(({ ours, peer }) => ours / peer)),
      note: `Peer: better-sqlite3 inserting the same rows with the same indexes, one a transaction, WAL and synchronous=FULL. ${PULLS} pulls, medians of ${REPEATS} runs by turns, after ${WARM_UPS} to warm up.`,
    },
  ];
}
