import { canonical, type Entry, type Trace } from '@clampwright/core/record';
import type { Database, Spool, Transaction } from '../engine.ts';
import { entryFromText, entryToRow, findEntries } from './entries.ts';
import type { AppendStatements } from './statements.ts';
import { pack } from './traces.ts';

/** Where entries go as they are decided: into the tables, or aside until all are known to be good. */
export interface Shelf {
  /** The entries under these identities, in whatever job they are. */
  find(ids: readonly string[]): Promise<readonly Entry[]>;
  put(entry: Entry, trace: Trace | undefined): Promise<void>;
}

export const shelfOn = (trx: Transaction, statements: AppendStatements): Shelf => ({
  find: (ids) => findEntries(trx, statements, ids),
  put: async (entry, trace) => {
    await statements.insertEntry(trx, entryToRow(entry));
    if (trace) await insertSamples(trx, entry, await pack(trace));
  },
});

export async function insertSamples(
  trx: Transaction,
  { id, jobId }: Pick<Entry, 'id' | 'jobId'>,
  samples: Uint8Array,
): Promise<void> {
  await trx.insertInto('traces').values({ pull_id: id, job_id: jobId, samples }).execute();
}

/** What is stored is seen, and what was put aside; nothing is stored. */
export const shelfAside = (db: Database, statements: AppendStatements, spool: Spool): Shelf => ({
  find: async (ids) => [...(await findEntries(db, statements, ids)), ...spool.find(ids).map(entryFromText)],
  put: async (entry, trace) =>
    spool.put({
      id: entry.id,
      seq: entry.seq,
      entry: canonical(entry),
      samples: trace ? await pack(trace) : null,
    }),
});
