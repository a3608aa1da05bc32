import type { Entry, Link, Trace } from '@clampwright/core/record';
import type { Database, Spool, Transaction } from '../engine.ts';
import { mendPull } from '../pulls/apply.ts';
import type { PullChange } from '../pulls/pull-row.ts';
import { entryFromText, findEntries } from './entries.ts';
import type { AppendStatements } from './statements.ts';
import { pack } from './traces.ts';

/** An entry as it is put away, and its trace. */
export interface Shelved {
  readonly link: Link;
  readonly trace: Trace | undefined;
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
    for (const { link, trace, pull } of shelved) {
      const { entry, text } = link;
      await statements.insertEntry(trx, { job_id: entry.jobId, seq: entry.seq, id: entry.id, entry: text });
      if (pull) await putPull(trx, statements, pull);
      if (trace) await insertSamples(trx, entry, await pack(trace));
    }
  },
});

export const putPull = async (trx: Transaction, statements: AppendStatements, change: PullChange): Promise<void> =>
  change.kind === 'add' ? void (await statements.insertPull(trx, change.row)) : mendPull(trx, change);

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
    for (const { link, trace, pull } of shelved) {
      const { entry, text } = link;
      const samples = trace ? await pack(trace) : null;
      spool.put({ id: entry.id, seq: entry.seq, entry: text, samples, pull: pull ? JSON.stringify(pull) : null });
    }
  },
});
