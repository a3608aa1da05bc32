import type { JobSheet, JobState } from '@clampwright/core/record';
import type { Selectable } from 'kysely';
import { z } from 'zod';
import { flag, type JobsTable } from '../tables.ts';
import { type Progress, progressOf } from './progress.ts';

const retorquesSchema = z.array(
  z.strictObject({ jointRef: z.string(), after: z.number(), unit: z.enum(['km', 'h', 'd']), note: z.string() }),
);
/** A joint of the job that wants to be tightened again. */
export type Retorque = z.infer<typeof retorquesSchema>[number];

/** A job as a list shows it: what follows from its entries, without reading them. */
export interface JobSummary extends Progress {
  readonly id: string;
  readonly title: string;
  readonly assetName: string;
  readonly assetLocation: string;
  readonly status: JobState['status'];
  readonly openedAt: string;
  /** Time of the last entry; of a closed job, when it was closed. */
  readonly lastAt: string;
  readonly lastSeq: number;
  readonly lastHash: string;
  readonly retorques: readonly Retorque[];
  readonly demo: boolean;
}

export const jobFromRow = (row: Selectable<JobsTable>): JobSummary => ({
  id: row.id,
  title: row.title,
  assetName: row.asset_name,
  assetLocation: row.asset_location,
  status: row.status,
  done: row.done,
  total: row.total,
  openedAt: row.opened_at,
  lastAt: row.last_at,
  lastSeq: row.last_seq,
  lastHash: row.last_hash,
  retorques: retorquesSchema.parse(JSON.parse(row.retorques)),
  demo: row.demo === 1,
});

/** The derived row of a job, whole. */
export const jobToRow = (state: JobState): Selectable<JobsTable> => ({
  demo: flag(state.sheet.demo),
  title: state.sheet.title,
  asset_name: state.sheet.asset.name,
  asset_location: state.sheet.asset.location,
  retorques: JSON.stringify(retorquesOf(state.sheet)),
  opened_at: state.openedAt,
  ...movedJob(state),
});

/** The columns that move with every entry. */
export const movedJob = (state: JobState) => ({
  id: state.jobId,
  status: state.status,
  ...progressOf(state),
  last_at: state.lastAt,
  last_seq: state.lastSeq,
  last_hash: state.lastHash,
});

const retorquesOf = (sheet: JobSheet): readonly Retorque[] =>
  sheet.joints.flatMap(({ ref, joint }) =>
    joint.content.retorque ? [{ jointRef: ref, ...joint.content.retorque }] : [],
  );
