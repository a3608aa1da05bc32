import { randomBytes } from 'node:crypto';
import { join } from 'node:path';
import { parse } from '@clampwright/core/failure';
import { canonical } from '@clampwright/core/record';
import { mappingSchema } from '@clampwright/intake/file';
import { takeFile } from '@clampwright/server';
import { openStore } from '@clampwright/store';
import { firstEntries, hubSheet } from '@clampwright/store/testing';
import BetterSqlite from 'better-sqlite3';
import { median } from './median.ts';
import type { BenchResult } from './result.ts';
import { inScratchFolder } from './scratch-folder.ts';

const LINES = 30_000;
const REPEATS = 3;
const sheet = hubSheet('bench');

/** A semicolon file with decimal commas, as an office in Europe saves it. */
function* lines(): Generator<Uint8Array> {
  const encoder = new TextEncoder();
  yield encoder.encode('position;torque;angle;time\r\n');
  for (let n = 0; n < LINES; n++) {
    const time = new Date(Date.UTC(2026, 0, 1) + 1000 * n).toISOString();
    yield encoder.encode(
      `${(n % 6) + 1};${(30 + (n % 50) / 10).toFixed(1).replace('.', ',')};${20 + (n % 7)};${time}\r\n`,
    );
  }
}

async function* file(): AsyncGenerator<Uint8Array> {
  yield* lines();
}

const MAPPING = {
  name: 'bench',
  delimiter: ';',
  decimalSign: 'comma',
  headerRow: true,
  position: 'position',
  torque: 'torque',
  torqueUnit: { unit: 'N·m' },
  angle: 'angle',
  time: { column: 'time', format: 'iso-8601', zone: 'UTC' },
};

/** Reads, places, judges, chains and stores every line; lines a second, and the rows that came of it. */
async function ours(
  folder: string,
): Promise<{ readonly perSecond: number; readonly rows: readonly (readonly (string | number)[])[] }> {
  const store = await openStore(folder);
  const mapping = parse(mappingSchema, MAPPING);
  if (!store.ok || !mapping.ok) throw new Error(JSON.stringify([store, mapping]));
  const opened = await store.value.jobs.open(firstEntries(sheet));
  if (!opened.ok) throw new Error(JSON.stringify(opened.failure));
  const by = { id: sheet.id, name: 'bench', role: 'technician', hasPin: false, demo: false } as const;
  const deps = { store: store.value, now: () => new Date(), random: (count: number) => randomBytes(count) };
  const startMs = performance.now();
  const taken = await takeFile(deps, {
    jobId: sheet.id,
    bytes: file(),
    mapping: mapping.value,
    mode: 'good-lines',
    jointRef: 'J1',
    by,
  });
  const perSecond = (1000 * LINES) / (performance.now() - startMs);
  if (!taken.ok || taken.value.result.added !== LINES) throw new Error(JSON.stringify(taken).slice(0, 500));
  const entries = await store.value.jobs.entries(sheet.id, { afterSeq: 2 });
  if (!entries.ok) throw new Error(JSON.stringify(entries.failure));
  await store.value.close();
  return { perSecond, rows: entries.value.map((entry) => [entry.jobId, entry.seq, entry.id, canonical(entry)]) };
}

/** The database's own bulk insert of the same rows: all in one transaction, nothing read and nothing judged. */
function bulkInsert(folder: string, rows: readonly (readonly (string | number)[])[]): number {
  const db = new BetterSqlite(join(folder, 'bare.sqlite'));
  db.pragma('journal_mode = wal');
  db.pragma('synchronous = full');
  db.exec(
    'create table entries (arrival integer primary key autoincrement, job_id text not null, seq integer not null, id text not null unique, entry text not null, unique (job_id, seq))',
  );
  const insert = db.prepare('insert into entries (job_id, seq, id, entry) values (?, ?, ?, ?)');
  const startMs = performance.now();
  db.transaction(() => {
    for (const row of rows) insert.run(...row);
  })();
  const perSecond = (1000 * rows.length) / (performance.now() - startMs);
  db.close();
  return perSecond;
}

/** Lines of a CSV file taken in a second, beside the database's bulk insert of what comes of them. */
export async function run(): Promise<BenchResult[]> {
  const pairs = [];
  for (let n = 0; n < REPEATS; n++) {
    pairs.push(
      await inScratchFolder(async (folder) => {
        const { perSecond, rows } = await ours(folder);
        return { ours: perSecond, peer: bulkInsert(folder, rows) };
      }),
    );
  }
  return [
    {
      name: 'CSV import',
      ours: median(pairs.map((pair) => pair.ours)),
      peer: median(pairs.map((pair) => pair.peer)),
      unit: 'lines/s',
      ratio: median(pairs.map((pair) => pair.ours / pair.peer)),
      note: `${LINES} lines read, placed, judged, hashed and stored in batches; the peer inserts the finished rows in one transaction. Medians of ${REPEATS} runs by turns.`,
    },
  ];
}
