import { ok, type Result } from '@clampwright/core/failure';
import type { Transaction } from '../engine.ts';
import { addAllPulls } from '../pulls/backfill.ts';
import { foldOnTo } from './folded-jobs.ts';
import { jobToRow } from './job.ts';

/** Makes what is derived of every job anew from its entries: its row, and its pulls by wrench and time. */
export async function rebuildJobs(trx: Transaction): Promise<Result<number>> {
  const heads = await trx
    .selectFrom('entries')
    .select(({ fn }) => ['job_id', fn.max('seq').as('last_seq')])
    .groupBy('job_id')
    .execute();
  for (const head of heads) {
    const state = await foldOnTo(trx, head.job_id, head.last_seq);
    if (!state) throw new Error(`job ${head.job_id} has entries but no state`);
    const { id, demo: _, ...columns } = jobToRow(state);
    await trx.updateTable('jobs').set(columns).where('id', '=', id).execute();
  }
  await trx.deleteFrom('pulls').execute();
  await addAllPulls(trx);
  return ok(heads.length);
}
