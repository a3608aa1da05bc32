import { type Entry, entrySchema } from '@clampwright/core/record';
import type { Kysely } from 'kysely';
import type { Tables } from '../tables.ts';
import { mendPull } from './apply.ts';
import type { PullChange } from './pull-row.ts';
import { pullChanges } from './tools-taken.ts';

const PAGE = 1000;

/**
 * Lays every pull that is stored by wrench and time, page by page, in the order in which the entries arrived.
 * For a table that is empty.
 */
export async function addAllPulls(db: Kysely<Tables>): Promise<void> {
  const follows = new Map<string, (entry: Entry) => PullChange | undefined>();
  const changeOf = (entry: Entry) => {
    const follow = follows.get(entry.jobId) ?? pullChanges();
    follows.set(entry.jobId, follow);
    return follow(entry) ?? [];
  };
  for (let page = await pageAfter(db, 0); page.length > 0; page = await pageAfter(db, page.at(-1)?.arrival ?? 0)) {
    const changes = page.flatMap(({ entry }) => changeOf(entrySchema.parse(JSON.parse(entry))));
    await addRows(db, changes);
    for (const change of changes) if (change.kind !== 'add') await mendPull(db, change);
  }
}

const pageAfter = (db: Kysely<Tables>, arrival: number) =>
  db
    .selectFrom('entries')
    .select(['arrival', 'entry'])
    .where('arrival', '>', arrival)
    .orderBy('arrival')
    .limit(PAGE)
    .execute();

/** A statement takes so many rows that its values stay below what SQLite takes: 32,766. */
const ROWS_AT_ONCE = 500;

async function addRows(db: Kysely<Tables>, changes: readonly PullChange[]): Promise<void> {
  const rows = changes.flatMap((change) => (change.kind === 'add' ? [change.row] : []));
  for (let from = 0; from < rows.length; from += ROWS_AT_ONCE) {
    await db
      .insertInto('pulls')
      .values(rows.slice(from, from + ROWS_AT_ONCE))
      .execute();
  }
}
