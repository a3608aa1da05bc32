import { failed, ok, type Result } from '@clampwright/core/failure';
import { type Entry, type JobState, type Seal, sealSchema } from '@clampwright/core/record';
import { sql } from 'kysely';
import type { Database } from '../engine.ts';
import { noJob } from './append.ts';
import { type EntryRange, readEntries } from './entries.ts';
import type { FoldedJobs } from './folded-jobs.ts';
import { type JobSummary, jobFromRow } from './job.ts';

export async function listJobs(db: Database, status?: JobSummary['status']): Promise<Result<readonly JobSummary[]>> {
  const query = db.selectFrom('jobs').selectAll().orderBy('last_at', 'desc').orderBy('id');
  const rows = await (status === undefined ? query : query.where('status', '=', status)).execute();
  return ok(rows.map(jobFromRow));
}

export async function getJob(db: Database, jobId: string): Promise<Result<JobSummary>> {
  const row = await db.selectFrom('jobs').selectAll().where('id', '=', jobId).executeTakeFirst();
  return row ? ok(jobFromRow(row)) : noJob(jobId);
}

export async function getEntries(db: Database, jobId: string, range?: EntryRange): Promise<Result<readonly Entry[]>> {
  const entries = await readEntries(db, jobId, range);
  if (entries.length > 0) return ok(entries);
  const job = await getJob(db, jobId);
  return job.ok ? ok([]) : job;
}

export async function getState(db: Database, folded: FoldedJobs, jobId: string): Promise<Result<JobState>> {
  const state = await folded.current(db, jobId);
  if (!state) return noJob(jobId);
  folded.keep(state);
  return ok(state);
}

export async function getSeal(db: Database, jobId: string): Promise<Result<Seal>> {
  const row = await db.selectFrom('seals').select('seal').where('job_id', '=', jobId).executeTakeFirst();
  return row
    ? ok(sealSchema.parse(JSON.parse(row.seal)))
    : failed({ kind: 'not-found', what: 'seal of job', id: jobId });
}

/** No more jobs than these are looked through for a joint. */
const LOOKED_THROUGH = 500;

/**
 * Jobs that hold one revision of a joint, the one last worked on first, among the five hundred last worked on.
 *
 * The sheet of a job is in its first entry, in canonical form, where identity and revision stand side by side.
 */
export async function jobsWithJoint(
  db: Database,
  joint: { readonly id: string; readonly revision: number },
  most: number,
): Promise<Result<readonly string[]>> {
  const text = `"id":"${joint.id}","revision":${joint.revision},`;
  const latest = db.selectFrom('jobs').select(['id', 'last_at']).orderBy('last_at', 'desc').limit(LOOKED_THROUGH);
  const rows = await db
    .selectFrom(latest.as('latest'))
    .innerJoin('entries', 'entries.job_id', 'latest.id')
    .select('latest.id')
    .where('entries.seq', '=', 1)
    .where(sql<number>`instr(entries.entry, ${text})`, '>', 0)
    .orderBy('latest.last_at', 'desc')
    .limit(most)
    .execute();
  return ok(rows.map(({ id }) => id));
}

/** Jobs that got entries since, and the mark for the next time. */
export interface Changes {
  readonly mark: number;
  readonly jobs: readonly { readonly id: string; readonly lastSeq: number }[];
}

/** `mark` counts arrivals over all jobs, so nothing is missed and nothing told twice. */
export async function changedSince(db: Database, mark: number): Promise<Result<Changes>> {
  const rows = await db
    .selectFrom('entries')
    .select(({ fn }) => ['job_id', fn.max('seq').as('last_seq'), fn.max('arrival').as('last_arrival')])
    .where('arrival', '>', mark)
    .groupBy('job_id')
    .execute();
  return ok({
    mark: rows.reduce((highest, row) => Math.max(highest, row.last_arrival), mark),
    jobs: rows.map((row) => ({ id: row.job_id, lastSeq: row.last_seq })),
  });
}
