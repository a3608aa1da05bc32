import type { Entry, Link, Trace } from '@clampwright/core/record';
import type { Database, Spool, Transaction } from '../engine.ts';
import { entryFromText, findEntries } from './entries.ts';
import type { AppendStatements } from './statements.ts';
import { pack } from './traces.ts';

/** An entry as it is put away, and its trace. */
export interface Shelved {
  readonly link: Link;
  readonly trace: Trace | undefined;
}

/** Where entries go once they are decided: into the tables, or aside until all are known to be good. */
export interface Shelf {
  /** The entries under these identities, in whatever job they are. */
  find(ids: readonly string[]): Promise<readonly Entry[]>;
  /** Puts entries away in their order. */
  put(shelved: readonly Shelved[]): Promise<void>;
}

export const shelfOn = (trx: Transaction, statements: AppendStatements): Shelf => ({
  find: (ids) => findEntries(trx, statements, ids),
  put: async (shelved) => {
    for (const { link, trace } of shelved) {
      const { entry, text } = link;
      await statements.insertEntry(trx, { job_id: entry.jobId, seq: entry.seq, id: entry.id, entry: text });
      if (trace) await insertSamples(trx, entry, await pack(trace));
    }
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
  put: async (shelved) => {
    for (const { link, trace } of shelved) {
      const { entry, text } = link;
      spool.put({ id: entry.id, seq: entry.seq, entry: text, samples: trace ? await pack(trace) : null });
    }
  },
});
