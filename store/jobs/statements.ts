import type { Selectable } from 'kysely';
import type { Database } from '../engine.ts';
import type { PullRow } from '../pulls/pull-row.ts';
import { statementOf } from '../statement.ts';
import type { EntriesTable, JobsTable, TracesTable } from '../tables.ts';
import type { movedJob } from './job.ts';

type Head = Pick<Selectable<JobsTable>, 'last_seq' | 'last_hash'>;
type NewEntry = Omit<Selectable<EntriesTable>, 'arrival'>;

/** What every append runs. */
export type AppendStatements = ReturnType<typeof appendStatements>;

export const appendStatements = (db: Database) => ({
  headOf: statementOf<{ readonly jobId: string }, Head>((slot) =>
    db.selectFrom('jobs').select(['last_seq', 'last_hash']).where('id', '=', slot('jobId')).compile(),
  ),
  findEntry: statementOf<{ readonly id: string }, { readonly entry: string }>((slot) =>
    db.selectFrom('entries').select('entry').where('id', '=', slot('id')).compile(),
  ),
  insertEntry: statementOf<NewEntry>((slot) =>
    db
      .insertInto('entries')
      .values({ job_id: slot('job_id'), seq: slot('seq'), id: slot('id'), entry: slot('entry') })
      .compile(),
  ),
  insertTrace: statementOf<Selectable<TracesTable>>((slot) =>
    db
      .insertInto('traces')
      .values({ pull_id: slot('pull_id'), job_id: slot('job_id'), samples: slot('samples') })
      .compile(),
  ),
  insertPull: statementOf<PullRow>((slot) =>
    db
      .insertInto('pulls')
      .values({
        wrench_id: slot('wrench_id'),
        taken_at: slot('taken_at'),
        pull_id: slot('pull_id'),
        job_id: slot('job_id'),
        joint_ref: slot('joint_ref'),
        stage: slot('stage'),
        round: slot('round'),
        position: slot('position'),
        torque_nm: slot('torque_nm'),
        shown_nm: slot('shown_nm'),
        lower_nm: slot('lower_nm'),
        upper_nm: slot('upper_nm'),
        uncertainty_nm: slot('uncertainty_nm'),
      })
      .compile(),
  ),
  moveJob: statementOf<ReturnType<typeof movedJob>>((slot) =>
    db
      .updateTable('jobs')
      .set({
        status: slot('status'),
        done: slot('done'),
        total: slot('total'),
        last_at: slot('last_at'),
        last_seq: slot('last_seq'),
        last_hash: slot('last_hash'),
      })
      .where('id', '=', slot('id'))
      .compile(),
  ),
});
