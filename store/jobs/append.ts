import { failed, ok, type Result } from '@clampwright/core/failure';
import type { Entry, Seal } from '@clampwright/core/record';
import { type Engine, type Transaction, transact } from '../engine.ts';
import { type Appended, type Asked, type Decide, decideNext } from './decided.ts';
import type { FoldedJobs } from './folded-jobs.ts';
import { movedJob } from './job.ts';
import { shelfOn } from './shelf.ts';
import type { AppendStatements } from './statements.ts';
import { packAll, type Traces } from './traces.ts';

export interface AppendOptions extends Omit<Asked, 'traces'> {
  /** Traces of the pulls that may come of it. */
  readonly traces?: Traces;
  /** Signs the chain in the same transaction when the job is closed. */
  readonly seal?: (last: Entry) => Seal;
}

/** What every append works with. */
export interface Appender {
  readonly engine: Engine;
  readonly folded: FoldedJobs;
  readonly statements: AppendStatements;
}

/** Decides on the state as it is now and appends what comes of it, all in one transaction. */
export async function append(
  { engine, folded, statements }: Appender,
  jobId: string,
  decide: Decide,
  { traces = {}, seal, ...asked }: AppendOptions = {},
): Promise<Result<Appended>> {
  const asking = { ...asked, traces: packAll(Object.entries(traces)) };
  const result = await transact(engine, async (trx) => {
    const state = await folded.current(trx, jobId);
    if (!state) return noJob(jobId);
    const shelf = shelfOn(trx, statements);
    const decided = await decideNext({ shelf, state, seen: new Map() }, asking, decide);
    if (!decided.ok || decided.value.already) return decided;
    await shelf.put(decided.value.shelved);
    await insertSeal(trx, decided.value.entries, seal);
    await statements.moveJob(trx, movedJob(decided.value.state));
    return decided;
  });
  if (!result.ok) return result;
  const { state, entries, already } = result.value;
  folded.keep(state);
  return ok({ entries, already });
}

export const noJob = (id: string) => failed({ kind: 'not-found', what: 'job', id });

async function insertSeal(trx: Transaction, entries: readonly Entry[], seal: AppendOptions['seal']): Promise<void> {
  const last = entries.at(-1);
  if (!seal || last?.body.kind !== 'closed') return;
  await trx
    .insertInto('seals')
    .values({ job_id: last.jobId, seal: JSON.stringify(seal(last)) })
    .execute();
}
