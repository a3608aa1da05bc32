import type { Rework } from '../joint/joint.ts';
import type { Step } from '../procedure/step.ts';
import type { TraceFigures } from '../trace/expectation.ts';
import type { Verdict } from '../verdict/verdict.ts';
import type { Tool } from '../wrench/wrench.ts';
import type { CellRef, JobSheet, PersonRef } from './entry.ts';

/** An attempt as the state remembers it. */
export interface Attempt {
  readonly pullId: string;
  readonly seq: number;
  readonly verdict: Verdict;
  readonly torqueNm: number;
  readonly angleDeg: number | undefined;
  /** What its trace is learned from, where it has one. */
  readonly figures?: TraceFigures | undefined;
  /** `set-aside`, `moved` away, or `undone` by loosening or a new fastener: kept, but no longer standing. */
  readonly standing: 'stands' | 'set-aside' | 'moved' | 'undone';
}

/** What a cell waits for. */
export type Need = 'pull' | 'loosen' | 'replace' | 'lead' | 'nothing';

export interface CellState {
  readonly ref: CellRef;
  /** Every attempt so far, first to last; cut to the last few while a large file is taken in. */
  readonly attempts: readonly Attempt[];
  readonly attemptCount: number;
  /** Attempts that count against the joint's maximum: since the fastener was new or the lead had it loosened. */
  readonly attemptsCounted: number;
  /** Verdict of the last standing attempt. */
  readonly verdict: Verdict | undefined;
  /** The lead whose word stands for this cell. */
  readonly acceptedBy: PersonRef | undefined;
  /** Angle turned in standing attempts that stayed under and may be carried on, degrees. */
  readonly carriedDeg: number;
  readonly need: Need;
}

export interface JointState {
  readonly ref: string;
  readonly rework: Rework;
  readonly steps: readonly Step[];
  /** By step, then by position (index 0 is position 1). */
  readonly cells: readonly (readonly CellState[])[];
  /** First cell in the order of the work that still needs something; undefined when the joint is done. */
  readonly next: CellRef | undefined;
  /** Every tool taken for this joint, the latest last. */
  readonly tools: readonly Tool[];
  /** The latest pull that stands somewhere in this joint. */
  readonly lastPull: { readonly pullId: string; readonly cell: CellRef } | undefined;
}

export interface JobState {
  readonly sheet: JobSheet;
  readonly status: 'open' | 'signed-off' | 'closed';
  readonly joints: readonly JointState[];
  readonly openedAt: string;
  readonly jobId: string;
  readonly lastSeq: number;
  readonly lastHash: string;
  readonly lastAt: string;
}
