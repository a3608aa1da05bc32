import type { Result } from '@clampwright/core/failure';
import type { Entry, JobState, Seal, Trace } from '@clampwright/core/record';
import { attempt, transact } from '../engine.ts';
import { type Appender, type AppendOptions, append } from './append.ts';
import { appendMany } from './append-many.ts';
import type { Appended, Decide } from './decided.ts';
import type { EntryRange } from './entries.ts';
import type { Intake, Tally } from './intake.ts';
import type { JobSummary } from './job.ts';
import { openJobIn } from './open.ts';
import {
  type Changes,
  changedSince,
  getEntries,
  getJob,
  getSeal,
  getState,
  jobsWithJoint,
  listJobs,
} from './reading.ts';
import { rebuildJobs } from './rebuild.ts';
import { readTrace } from './traces.ts';

export interface Jobs {
  /** Stores a new job with the entries that it begins with. */
  open(entries: readonly Entry[]): Promise<Result<Appended>>;
  /** Appends what is decided on the state as it is at that moment. */
  append(jobId: string, decide: Decide, options?: AppendOptions): Promise<Result<Appended>>;
  /** Appends a long list, batch by batch, one item decided after the other. */
  appendMany<Item>(
    jobId: string,
    batches: AsyncIterable<readonly Item[]>,
    intake: Intake<Item>,
  ): Promise<Result<Tally>>;
  /** Jobs, the one last worked on first. */
  list(wanted?: { readonly status?: JobSummary['status'] }): Promise<Result<readonly JobSummary[]>>;
  /** Jobs that hold this revision of a joint, at most so many, the one last worked on first. */
  withJoint(
    joint: { readonly id: string; readonly revision: number },
    most: number,
  ): Promise<Result<readonly string[]>>;
  get(jobId: string): Promise<Result<JobSummary>>;
  /** Entries of a job in their order. */
  entries(jobId: string, range?: EntryRange): Promise<Result<readonly Entry[]>>;
  /** The state of a job; each cell remembers its last fifty attempts. */
  state(jobId: string): Promise<Result<JobState>>;
  /** The trace of a pull, every digit of it. */
  trace(pullId: string): Promise<Result<Trace>>;
  /** The seal of a closed job. */
  seal(jobId: string): Promise<Result<Seal>>;
  /** Jobs that got entries after a mark (0: ever), from whatever process, and the mark to ask with next time. */
  changedSince(mark: number): Promise<Result<Changes>>;
  /** Makes the derived list of jobs anew from the entries; tells how many. */
  rebuild(): Promise<Result<number>>;
}

export function jobsOn(at: Appender): Jobs {
  const { engine, folded } = at;
  const { reading } = engine;
  return {
    open: (entries) => openJobIn(at, entries),
    append: (jobId, decide, options) => append(at, jobId, decide, options),
    appendMany: (jobId, batches, intake) => appendMany(at, jobId, batches, intake),
    list: ({ status } = {}) => attempt(engine, () => listJobs(reading, status)),
    withJoint: (joint, most) => attempt(engine, () => jobsWithJoint(reading, joint, most)),
    get: (jobId) => attempt(engine, () => getJob(reading, jobId)),
    entries: (jobId, range) => attempt(engine, () => getEntries(reading, jobId, range)),
    state: (jobId) => attempt(engine, () => getState(reading, folded, jobId)),
    trace: (pullId) => attempt(engine, () => readTrace(reading, pullId)),
    seal: (jobId) => attempt(engine, () => getSeal(reading, jobId)),
    changedSince: (mark) => attempt(engine, () => changedSince(reading, mark)),
    rebuild: () => transact(engine, rebuildJobs),
  };
}
