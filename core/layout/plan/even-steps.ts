import { inGroups } from '../in-groups.ts';
import { pullTogether } from '../interaction/pull-together.ts';
import type { GivingWay } from '../interaction/simulate.ts';
import { inverseOf, type SquareMatrix, timesVector } from '../interaction/square-matrix.ts';
import { TightSet } from '../interaction/tight-set.ts';

/* A plan goes up in even steps: after each round every bolt carries the same share of its final force. */

/** In which order, and how many bolts at once by as many wrenches. */
export interface Pulling {
  readonly orders: readonly (readonly number[])[];
  readonly atOnce: number;
}

/** What the pulls of a plan aim at, by round and pull, and the largest force at any time. */
export interface Steps {
  readonly targetsN: readonly (readonly number[])[];
  readonly peakN: number;
  /** Whether every nut has come to the travel of the end; on the way it may not be turned back. */
  readonly arrives: boolean;
}

/** A travel this near to that of the end is there. */
const ARRIVED = 1e-12;

const hasArrived = (joint: TightSet, travelsMm: Float64Array): boolean =>
  travelsMm.every((travel, bolt) => Math.abs(joint.travelMm[bolt]! - travel) <= ARRIVED * Math.abs(travel));

/**
 * Forces to give so that each round ends at its share of the final forces: every nut is advanced to the travel it has
 * in that end, and the force it then carries is what the wrench must be set to. For one round this is S = U·F with
 * M = Uᵀ·D·U in the order of the pulls. Several wrenches advance the nuts of a group together; what each bolt then
 * carries is its target.
 *
 * @param shares of the final forces after each round, rising to 1
 * @source derived; the same as going backward from the end state, bolt by bolt
 */
export function evenSteps(
  givingWay: GivingWay,
  { orders, atOnce }: Pulling,
  finalN: readonly number[],
  shares: readonly number[],
): Steps {
  const { first, later = first } = givingWay;
  let joint = new TightSet(first);
  let travelsMm = timesVector(first, finalN);
  let peakN = 0;
  const targetsN = orders.map((bolts, round) => {
    if (round === 1 && later !== first) {
      travelsMm = timesVector(later, finalN);
      const before = joint.forceN;
      joint = new TightSet(later);
      joint.begin(before);
    }
    const share = shares[round] ?? 1;
    return inGroups(bolts, atOnce).flatMap((group) => {
      for (const bolt of group) joint.advance(bolt, share * travelsMm[bolt]!);
      for (const force of joint.forceN) if (force > peakN) peakN = force;
      return group.map((bolt) => joint.forceN[bolt]!);
    });
  });
  return { targetsN, peakN, arrives: hasArrived(joint, travelsMm) };
}

/** How high each bolt comes, at most, while a round with all bolts tight takes the joint from nothing to the end. */
export function highestOnTheWay(
  compliance: SquareMatrix,
  groups: readonly (readonly number[])[],
  finalN: readonly number[],
): Float64Array {
  const stiffness = inverseOf(compliance);
  if (!stiffness) throw new Error('a compliance that is not positive definite');
  const travelsMm = timesVector(compliance, finalN);
  const { size, values } = stiffness;
  const forces = new Float64Array(size);
  const highest = new Float64Array(size);
  for (const group of groups) {
    for (let i = 0; i < size; i++) {
      for (const bolt of group) forces[i]! += values[i * size + bolt]! * travelsMm[bolt]!;
      if (forces[i]! > highest[i]!) highest[i] = forces[i]!;
    }
  }
  return highest;
}

/**
 * Forces to give when no pull may go above a ceiling and rounds need not end even: each nut goes on to the travel that
 * it has in the end, or to the ceiling if that comes first. On the rings tried, the lowest ceiling so held lies within
 * 0.02 % of that of a linear program over all travels.
 */
export function cappedSteps(
  compliance: SquareMatrix,
  { orders, atOnce }: Pulling,
  finalN: readonly number[],
  ceilingN: number,
): Steps {
  const joint = new TightSet(compliance);
  const travelsMm = timesVector(compliance, finalN);
  let peakN = 0;
  const targetsN = orders.map((bolts) =>
    inGroups(bolts, atOnce).flatMap((group) => {
      raise(joint, group, travelsMm, ceilingN);
      for (const force of joint.forceN) if (force > peakN) peakN = force;
      return group.map((bolt) => joint.forceN[bolt]!);
    }),
  );
  return { targetsN, peakN, arrives: hasArrived(joint, travelsMm) };
}

function raise(joint: TightSet, group: readonly number[], travelsMm: Float64Array, ceilingN: number): void {
  if (group.length === 1) joint.raise(group[0]!, travelsMm[group[0]!]!, ceilingN);
  else
    pullTogether(
      joint,
      group.map((bolt) => ({ bolt, forceN: ceilingN, travelMm: travelsMm[bolt]! })),
    );
}

const HALVINGS = 40;

/** The lowest ceiling that holds, and its rounds; undefined where not even the given one does. */
export function lowestCapped(
  compliance: SquareMatrix,
  pulling: Pulling,
  finalN: readonly number[],
  ceilingN: number,
): Steps | undefined {
  const at = (ceiling: number) => cappedSteps(compliance, pulling, finalN, ceiling);
  let best = at(ceilingN);
  if (!best.arrives) return undefined;
  let [low, high] = [Math.max(...finalN), ceilingN];
  for (let n = 0; n < HALVINGS && high - low > 1e-6 * high; n++) {
    const middle = (low + high) / 2;
    const tried = at(middle);
    if (tried.arrives) [best, high] = [tried, middle];
    else low = middle;
  }
  return best;
}
