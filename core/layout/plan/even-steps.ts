import type { GivingWay } from '../interaction/simulate.ts';
import { inverseOf, type SquareMatrix, timesVector } from '../interaction/square-matrix.ts';
import { TightSet } from '../interaction/tight-set.ts';

/* A plan goes up in even steps: after each round every bolt carries the same share of its final force. */

/** What the pulls of a plan aim at, by round and pull, and the largest force at any time. */
export interface Steps {
  readonly targetsN: readonly (readonly number[])[];
  readonly peakN: number;
}

/**
 * Forces to give so that each round ends at its share of the final forces: every nut is advanced to the travel it has
 * in that end, and the force it then carries is what the wrench must be set to. For one round this is S = U·F with
 * M = Uᵀ·D·U in the order of the pulls.
 *
 * @param shares of the final forces after each round, rising to 1
 * @source derived; the same as going backward from the end state, bolt by bolt
 */
export function evenSteps(
  givingWay: GivingWay,
  orders: readonly (readonly number[])[],
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
    return bolts.map((bolt) => {
      joint.advance(bolt, share * travelsMm[bolt]!);
      for (const force of joint.forceN) if (force > peakN) peakN = force;
      return joint.forceN[bolt]!;
    });
  });
  return { targetsN, peakN };
}

/** How high each bolt comes, at most, while a round with all bolts tight takes the joint from nothing to the end. */
export function highestOnTheWay(
  compliance: SquareMatrix,
  bolts: readonly number[],
  finalN: readonly number[],
): Float64Array {
  const stiffness = inverseOf(compliance);
  if (!stiffness) throw new Error('a compliance that is not positive definite');
  const travelsMm = timesVector(compliance, finalN);
  const { size, values } = stiffness;
  const forces = new Float64Array(size);
  const highest = new Float64Array(size);
  for (const bolt of bolts) {
    for (let i = 0; i < size; i++) {
      forces[i]! += values[i * size + bolt]! * travelsMm[bolt]!;
      if (forces[i]! > highest[i]!) highest[i] = forces[i]!;
    }
  }
  return highest;
}

/** Rounds that go as far as a ceiling lets each pull go, and never past the travel of the end. */
export interface Capped extends Steps {
  /** Whether every nut has come to the travel of the end. */
  readonly arrives: boolean;
}

/** A travel this near to that of the end is there. */
const ARRIVED = 1e-12;

/**
 * Forces to give when no pull may go above a ceiling and rounds need not end even: each nut goes on to the travel that
 * it has in the end, or to the ceiling if that comes first. On the rings tried, the lowest ceiling so held lies within
 * 0.02 % of that of a linear program over all travels.
 */
export function cappedSteps(
  compliance: SquareMatrix,
  orders: readonly (readonly number[])[],
  finalN: readonly number[],
  ceilingN: number,
): Capped {
  const joint = new TightSet(compliance);
  const travelsMm = timesVector(compliance, finalN);
  let peakN = 0;
  const targetsN = orders.map((bolts) =>
    bolts.map((bolt) => {
      joint.raise(bolt, travelsMm[bolt]!, ceilingN);
      for (const force of joint.forceN) if (force > peakN) peakN = force;
      return joint.forceN[bolt]!;
    }),
  );
  const arrives = travelsMm.every((travel, bolt) => joint.travelMm[bolt]! >= travel * (1 - ARRIVED));
  return { targetsN, peakN, arrives };
}

const HALVINGS = 40;

/** The lowest ceiling that holds, and its rounds; undefined where not even the given one does. */
export function lowestCapped(
  compliance: SquareMatrix,
  orders: readonly (readonly number[])[],
  finalN: readonly number[],
  ceilingN: number,
): Capped | undefined {
  const at = (ceiling: number) => cappedSteps(compliance, orders, finalN, ceiling);
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
