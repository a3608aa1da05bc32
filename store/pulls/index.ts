import { ok, type Result } from '@clampwright/core/failure';
import { type Entry, entrySchema, type JobSheet } from '@clampwright/core/record';
import type { PullInDoubt } from '@clampwright/core/wrench';
import { attempt, type Database, type Engine } from '../engine.ts';
import type { PullRow } from './pull-row.ts';

/** After one instant, up to another; left out: without end. */
export interface Span {
  readonly after?: string | undefined;
  readonly to?: string | undefined;
}

/** The pulls of a wrench, by an index over wrench and time: the cost grows with what is found only. */
export interface Pulls {
  /** Every pull that stands, in the order in which it was made. */
  of(wrenchId: string, span: Span): Promise<Result<readonly PullInDoubt[]>>;
  count(wrenchId: string, span: Span): Promise<Result<number>>;
}

export function pullsOn(engine: Engine): Pulls {
  const { reading } = engine;
  return {
    of: (wrenchId, span) => attempt(engine, () => pullsOf(reading, wrenchId, span)),
    count: (wrenchId, span) => attempt(engine, () => count(reading, wrenchId, span)),
  };
}

/** Before and after every instant there is. */
const ALWAYS = { after: '0', to: '9999-12-31T23:59:59.999Z' };

function within(db: Database, wrenchId: string, { after = ALWAYS.after, to = ALWAYS.to }: Span) {
  return db
    .selectFrom('pulls')
    .where('wrench_id', '=', wrenchId)
    .where('taken_at', '>', after)
    .where('taken_at', '<=', to);
}

async function count(db: Database, wrenchId: string, span: Span): Promise<Result<number>> {
  const { pulls } = await within(db, wrenchId, span)
    .select(({ fn }) => fn.countAll<number>().as('pulls'))
    .executeTakeFirstOrThrow();
  return ok(pulls);
}

async function pullsOf(db: Database, wrenchId: string, span: Span): Promise<Result<readonly PullInDoubt[]>> {
  const rows = await within(db, wrenchId, span).selectAll().orderBy('taken_at').orderBy('pull_id').execute();
  const sheets = await sheetsOf(db, [...new Set(rows.map(({ job_id }) => job_id))]);
  return ok(rows.map((row) => pullFrom(row, sheets)));
}

/** What the jobs are about stands in the first entry of each. */
async function sheetsOf(db: Database, jobIds: readonly string[]): Promise<ReadonlyMap<string, JobSheet>> {
  const sheets = new Map<string, JobSheet>();
  for (const jobId of jobIds) {
    const { entry } = await db
      .selectFrom('entries')
      .select('entry')
      .where('job_id', '=', jobId)
      .where('seq', '=', 1)
      .executeTakeFirstOrThrow();
    const { body }: Entry = entrySchema.parse(JSON.parse(entry));
    if (body.kind === 'opened') sheets.set(jobId, body.sheet);
  }
  return sheets;
}

function pullFrom(row: PullRow, sheets: ReadonlyMap<string, JobSheet>): PullInDoubt {
  const sheet = sheets.get(row.job_id);
  const joint = sheet?.joints.find(({ ref }) => ref === row.joint_ref);
  if (!sheet || !joint) throw new Error(`pull ${row.pull_id} belongs to a joint that its job does not have`);
  const { consequenceClass } = joint.joint.content;
  return {
    pullId: row.pull_id,
    wrenchId: row.wrench_id,
    takenAt: row.taken_at,
    job: { id: row.job_id, title: sheet.title },
    asset: sheet.asset.name,
    jointRef: row.joint_ref,
    joint: joint.label,
    stage: row.stage,
    round: row.round,
    position: row.position,
    torqueNm: row.torque_nm,
    shownNm: row.shown_nm,
    ...(consequenceClass === undefined ? {} : { consequenceClass }),
    ...(row.lower_nm === null ? {} : { lowerNm: row.lower_nm }),
    ...(row.upper_nm === null ? {} : { upperNm: row.upper_nm }),
    ...(row.uncertainty_nm === null ? {} : { expandedUncertaintyNm: row.uncertainty_nm }),
  };
}
