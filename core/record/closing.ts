import type { Step } from '../procedure/step.ts';
import { derived } from './cell.ts';
import type { CellState, JointState } from './state.ts';

/** How a closing round went: how far each fastener still turned. */
export interface ClosingRound {
  readonly step: Step;
  readonly stillDeg: number;
  /** By position, degrees; undefined where nothing was pulled or the wrench told no angle. */
  readonly turnedDeg: readonly (number | undefined)[];
  readonly moved: readonly number[];
  /** Positions that were pulled without an angle being told. */
  readonly untold: readonly number[];
  readonly isPulled: boolean;
  /** Every position has its verdict. */
  readonly isWhole: boolean;
  /** It is whole, and nothing moved further than the limit. */
  readonly isStill: boolean;
}

/** The closing rounds of a joint, in order. */
export const closingRounds = ({ steps, cells }: Pick<JointState, 'steps' | 'cells'>): readonly ClosingRound[] =>
  steps.flatMap((step, index) => (step.closing ? [closingRound(step, step.closing.stillDeg, cells[index]!)] : []));

/** Its last closing round is made, no other is allowed, and it is not shown that nothing moves any more. */
export function isUnsettled(joint: Pick<JointState, 'steps' | 'cells' | 'next'>): boolean {
  const last = closingRounds(joint).at(-1);
  return last !== undefined && !joint.next && last.isPulled && last.isWhole && !last.isStill;
}

function closingRound(step: Step, stillDeg: number, cells: readonly CellState[]): ClosingRound {
  const turnedDeg = cells.map(turnedOn);
  const found = cells.map((cell, index) => ({ position: index + 1, cell, deg: turnedDeg[index] }));
  const moved = found.flatMap(({ position, deg }) => (deg !== undefined && deg > stillDeg ? [position] : []));
  const untold = found.flatMap(({ position, cell, deg }) =>
    cell.verdict !== undefined && deg === undefined ? [position] : [],
  );
  const isWhole = cells.every((cell) => isSettled(cell));
  const isStill = isWhole && moved.length === 0 && untold.length === 0;
  const isPulled = cells.some(({ verdict }) => verdict !== undefined);
  return { step, stillDeg, turnedDeg, moved, untold, isPulled, isWhole, isStill };
}

const isSettled = ({ verdict, acceptedBy }: CellState): boolean => acceptedBy !== undefined || verdict === 'within';

/** All that stands was turned after one another; one pull without an angle leaves the sum unknown. */
function turnedOn({ attempts }: CellState): number | undefined {
  const standing = attempts.filter(({ standing: how }) => how === 'stands');
  let sum = 0;
  for (const { angleDeg } of standing) {
    if (angleDeg === undefined) return undefined;
    sum += Math.abs(angleDeg);
  }
  return standing.length === 0 ? undefined : sum;
}

/** A closing round behind one in which nothing moved is not due: its cells want no pull. */
export function withoutIdleRounds(joint: JointState): JointState {
  if (!joint.steps.some(({ closing }) => closing)) return joint;
  let stillIn: number | undefined;
  const cells = joint.steps.map((step, index) => {
    const row = joint.cells[index]!;
    if (!step.closing) return row;
    if (stillIn === step.stage) return row.map((cell) => (cell.verdict === undefined ? idle(cell) : cell));
    if (closingRound(step, step.closing.stillDeg, row).isStill) stillIn = step.stage;
    return row.map((cell) => derived(cell, joint.rework));
  });
  return { ...joint, cells };
}

const idle = (cell: CellState): CellState => (cell.need === 'nothing' ? cell : { ...cell, need: 'nothing' });

/** A cell that was never pulled and need not be. */
export const isLeftOut = ({ need, verdict, acceptedBy }: CellState): boolean =>
  need === 'nothing' && verdict === undefined && acceptedBy === undefined;
