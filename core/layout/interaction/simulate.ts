import type { SquareMatrix } from './square-matrix.ts';
import { TightSet } from './tight-set.ts';

/** How a joint gives way in the first round and, where its gasket is stiffer once pressed, in those after. */
export interface GivingWay {
  readonly first: SquareMatrix;
  readonly later?: SquareMatrix;
}

/** One round: bolts from 0 in order, and what each pull aims at. */
export interface Round {
  readonly bolts: readonly number[];
  readonly targetsN: ArrayLike<number>;
  /** Bolts pulled at the same time, by as many wrenches. */
  readonly atOnce?: number;
}

/** Told of after each pull, or each pull of several wrenches at once. */
export type Watch = (forcesN: Float64Array, step: number) => void;

export interface Simulated {
  readonly finalN: Float64Array;
  /** Pulls in which the wrench found its target reached and turned nothing. */
  readonly idlePulls: number;
}

/**
 * Tightens a joint pull by pull, exactly: elastic, without friction between nut and neighbours, without creep.
 *
 * @param startN forces to begin with; bolts with 0 were never pulled
 */
export function simulate(
  givingWay: GivingWay,
  rounds: readonly Round[],
  startN?: ArrayLike<number>,
  watch?: Watch,
): Simulated {
  const { first, later = first } = givingWay;
  let joint = new TightSet(first);
  if (startN) joint.begin(startN);
  let idlePulls = 0;
  let step = 0;
  for (const [index, { bolts, targetsN, atOnce = 1 }] of rounds.entries()) {
    if (index === 1 && later !== first) joint = pressed(later, joint);
    for (let from = 0; from < bolts.length; from += atOnce) {
      idlePulls += pullTogether(joint, bolts, targetsN, from, Math.min(atOnce, bolts.length - from));
      watch?.(joint.forceN, step);
      step += 1;
    }
  }
  return { finalN: joint.forceN.slice(), idlePulls };
}

/** The same forces on the pressed gasket. */
function pressed(later: SquareMatrix, before: TightSet): TightSet {
  const joint = new TightSet(later);
  joint.begin(before.forceN);
  return joint;
}

/** Wrenches that pull by turns end where wrenches that pull together do; far sooner than this. */
const MOST_TURNS = 200;
const SETTLED = 1e-13;

/** @returns how many of the wrenches turned nothing */
function pullTogether(
  joint: TightSet,
  bolts: readonly number[],
  targetsN: ArrayLike<number>,
  from: number,
  count: number,
): number {
  if (count === 1) return joint.pull(bolts[from]!, targetsN[from]!) > 0 ? 0 : 1;
  const travelled = new Float64Array(count);
  for (let turn = 0; turn < MOST_TURNS; turn++) {
    let most = 0;
    for (let k = 0; k < count; k++) {
      const went = joint.pull(bolts[from + k]!, targetsN[from + k]!);
      travelled[k]! += went;
      most = Math.max(most, went / (travelled[k]! || 1));
    }
    if (most < SETTLED) break;
  }
  return travelled.filter((went) => went === 0).length;
}
