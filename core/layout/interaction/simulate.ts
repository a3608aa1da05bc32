import { pullTogether } from './pull-together.ts';
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
  /** The same bolts as several wrenches pull them at the same time; one after another where left out. */
  readonly groups?: readonly (readonly number[])[];
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
  for (const [number, round] of rounds.entries()) {
    if (number === 1 && later !== first) joint = pressed(later, joint);
    let pull = 0;
    for (const group of round.groups ?? round.bolts.map((bolt) => [bolt])) {
      idlePulls += pullGroup(joint, group, round.targetsN, pull);
      pull += group.length;
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

/** @returns how many of the wrenches turned nothing */
function pullGroup(joint: TightSet, bolts: readonly number[], targetsN: ArrayLike<number>, from: number): number {
  if (bolts.length === 1) return joint.pull(bolts[0]!, targetsN[from]!) > 0 ? 0 : 1;
  return pullTogether(
    joint,
    bolts.map((bolt, wrench) => ({ bolt, forceN: targetsN[from + wrench]! })),
  );
}
