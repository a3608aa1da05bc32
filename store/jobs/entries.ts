import { canonical, type Entry, entrySchema } from '@clampwright/core/record';
import type { Selectable } from 'kysely';
import type { Database } from '../engine.ts';
import type { EntriesTable } from '../tables.ts';
import type { AppendStatements } from './statements.ts';

export const entryFromText = (text: string): Entry => entrySchema.parse(JSON.parse(text));

export const entryFromRow = ({ entry }: Pick<Selectable<EntriesTable>, 'entry'>): Entry => entryFromText(entry);

export const entryToRow = (entry: Entry): Omit<Selectable<EntriesTable>, 'arrival'> => ({
  job_id: entry.jobId,
  seq: entry.seq,
  id: entry.id,
  entry: canonical(entry),
});

const PAGE = 1000;

/** Which part of a job's entries is wanted. */
export interface EntryRange {
  readonly afterSeq?: number;
  readonly limit?: number;
}

/** Entries of a job in their order. */
export async function readEntries(
  db: Database,
  jobId: string,
  { afterSeq = 0, limit }: EntryRange = {},
): Promise<readonly Entry[]> {
  const query = db
    .selectFrom('entries')
    .select('entry')
    .where('job_id', '=', jobId)
    .where('seq', '>', afterSeq)
    .orderBy('seq');
  const rows = await (limit === undefined ? query : query.limit(limit)).execute();
  return rows.map(entryFromRow);
}

/** Entries after one and up to another, page by page: a job can be longer than memory. */
export async function* entriesBetween(
  db: Database,
  jobId: string,
  afterSeq: number,
  lastSeq: number,
): AsyncGenerator<Entry> {
  for (let seq = afterSeq; seq < lastSeq; seq += PAGE) {
    yield* await readEntries(db, jobId, { afterSeq: seq, limit: Math.min(PAGE, lastSeq - seq) });
  }
}

/** The entries under these identities, in whatever job they are. */
export async function findEntries(
  db: Database,
  { findEntry }: AppendStatements,
  ids: readonly string[],
): Promise<readonly Entry[]> {
  const found: Entry[] = [];
  for (const id of ids) {
    for (const row of await findEntry(db, { id })) found.push(entryFromRow(row));
  }
  return found;
}
