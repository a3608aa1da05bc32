import type { Step } from '@clampwright/core/procedure';
import type { CellState, JobState, JointState } from '@clampwright/core/record';

export interface Progress {
  readonly done: number;
  readonly total: number;
}

const isDone = (cell: CellState): boolean => cell.need === 'nothing';

const count = (cells: readonly CellState[]): Progress => ({ done: cells.filter(isDone).length, total: cells.length });

/** Cells done and in all, over every stage and round of a joint. */
export const progressOfJoint = (joint: JointState): Progress => count(joint.cells.flat());

/** Cells done and in all of a whole job. */
export const progressOfJob = (job: JobState): Progress => count(job.joints.flatMap((joint) => joint.cells.flat()));

/** Where the work on a joint stands. */
export interface PlaceInWork {
  readonly step: Step;
  /** One a position, of this step. */
  readonly cells: readonly CellState[];
  readonly progress: Progress;
  /** Positions of this round that still wait, in the order of the work. */
  readonly coming: readonly number[];
  readonly stages: number;
  /** Rounds of this stage. */
  readonly rounds: number;
}

/** The round in hand: the one of the next position, or the last one when the joint is done. */
export function placeInWork(joint: JointState): PlaceInWork {
  const at = joint.next ? stepIndex(joint, joint.next) : joint.steps.length - 1;
  const step = joint.steps[at];
  const cells = joint.cells[at];
  if (!step || !cells) throw new Error('a joint has a step');
  return {
    step,
    cells,
    progress: count(cells),
    coming: comingIn(step, cells, joint.next?.position),
    stages: new Set(joint.steps.map(({ stage }) => stage)).size,
    rounds: joint.steps.filter(({ stage }) => stage === step.stage).length,
  };
}

/** Index of the step that a cell belongs to; -1 where the joint has none. */
export const stepIndex = (joint: JointState, ref: { readonly stage: number; readonly round: number }): number =>
  joint.steps.findIndex((step) => step.stage === ref.stage && step.round === ref.round);

function comingIn(step: Step, cells: readonly CellState[], next: number | undefined): readonly number[] {
  const waiting = step.order.filter((position) => cells[position - 1]?.need !== 'nothing');
  if (next === undefined) return waiting;
  return [next, ...waiting.filter((position) => position !== next)];
}

/** Every cell of one position, in the order of the stages. */
export const cellsOfPosition = (joint: JointState, position: number): readonly CellState[] =>
  joint.cells.flatMap((row) => row[position - 1] ?? []);
