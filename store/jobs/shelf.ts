import type { Entry, Link } from '@clampwright/core/record';
import type { Database, Spool, Transaction } from '../engine.ts';
import { mendPull } from '../pulls/apply.ts';
import type { PullChange } from '../pulls/pull-row.ts';
import { entryFromText, findEntries } from './entries.ts';
import type { AppendStatements } from './statements.ts';

/** An entry as it is put away, and the samples of its trace. */
export interface Shelved {
  readonly link: Link;
  readonly samples: Uint8Array | undefined;
  /** What it does to the pulls by wrench and time. */
  readonly pull: PullChange | undefined;
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
    for (const { link, samples, pull } of shelved) {
      const { entry, text } = link;
      await statements.insertEntry(trx, { job_id: entry.jobId, seq: entry.seq, id: entry.id, entry: text });
      if (pull) await putPull(trx, statements, pull);
      if (samples) await statements.insertTrace(trx, { pull_id: entry.id, job_id: entry.jobId, samples });
    }
  },
});

export const putPull = async (trx: Transaction, statements: AppendStatements, change: PullChange): Promise<void> =>
  change.kind === 'add' ? void (await statements.insertPull(trx, change.row)) : mendPull(trx, change);

/** What is stored is seen, and what was put aside; nothing is stored. */
export const shelfAside = (db: Database, statements: AppendStatements, spool: Spool): Shelf => ({
  find: async (ids) => [...(await findEntries(db, statements, ids)), ...spool.find(ids).map(entryFromText)],
  put: async (shelved) => {
    for (const { link, samples = null, pull } of shelved) {
      const { entry, text } = link;
      spool.put({ id: entry.id, seq: entry.seq, entry: text, samples, pull: pull ? JSON.stringify(pull) : null });
    }
  },
});
