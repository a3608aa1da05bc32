import { invalid, ok, type Result } from '../../failure/failure.ts';
import { inGroups } from '../in-groups.ts';
import { MOST_ROUNDS } from '../interaction/rounds-request.ts';
import type { SourcedJoint } from '../interaction/source.ts';
import { cappedSteps, evenSteps, highestOnTheWay, lowestCapped, type Pulling, type Steps } from './even-steps.ts';
import { gentlestShares } from './share-ladder.ts';

/** A plan that is wanted; bolts from 0. */
export interface WantedSteps extends Pulling {
  readonly joint: SourcedJoint;
  readonly finalN: readonly number[];
  readonly ceilingN?: number | undefined;
  readonly seatingN?: number | undefined;
  readonly roundShares?: readonly number[] | undefined;
}

export interface PlannedSteps extends Steps {
  /** Share of the final force after each round; absent where rounds do not end even. */
  readonly shares?: readonly number[];
}

/** Forces may pass what they are held to by so much; it is rounding. */
const ROUNDING = 1e-9;

/**
 * What each pull aims at: rounds that end even where the ceiling allows it, else rounds as far as the ceiling lets
 * each pull go. Refused with `ceilingN`, `seatingN`, `order` or `rounds` where no rounds hold.
 */
export function planSteps(wanted: WantedSteps): Result<PlannedSteps> {
  const shares = wanted.roundShares ?? gentlest(wanted, inOneRound(wanted));
  const even = { ...evenSteps(wanted.joint, wanted, wanted.finalN, shares), shares };
  const { ceilingN } = wanted;
  const fault = belowNothing(even) ?? belowSeating(even, wanted) ?? turnedBack(even);
  if (ceilingN === undefined || even.peakN <= ceilingN * (1 + ROUNDING)) return fault ?? ok(even);
  const isOver = highestPull(even) > ceilingN * (1 + ROUNDING);
  const capped = wanted.roundShares ? undefined : cappedOf(wanted, ceilingN);
  if (capped) return belowNothing(capped) ?? belowSeating(capped, wanted) ?? ok(capped);
  return isOver ? overCeiling(even, wanted, ceilingN) : (fault ?? ok(even));
}

const inOneRound = ({ joint, orders, atOnce, finalN }: WantedSteps): Steps =>
  evenSteps(joint, { orders: orders.slice(0, 1), atOnce }, finalN, [1]);

const highestPull = ({ targetsN }: Steps): number => Math.max(...targetsN.map((round) => Math.max(...round)));
const lowestPull = ({ targetsN }: Steps): number => Math.min(...targetsN.map((round) => Math.min(...round)));

/** One round has but one plan, and a bed that grows stiffer is only planned in even steps. */
function cappedOf(wanted: WantedSteps, ceilingN: number): Steps | undefined {
  const { joint, orders, finalN } = wanted;
  if (orders.length === 1 || joint.later) return undefined;
  return lowestCapped(joint.first, wanted, finalN, ceilingN);
}

function belowNothing(steps: Steps) {
  if (lowestPull(steps) > 0) return undefined;
  const message = 'In this order a bolt would carry nothing at its own pull, so no force can be aimed at.';
  return invalid('order', message, 'another order, or more rounds');
}

/** Where the neighbours open the joint under a bolt, its nut would go down as the shares go up. */
function turnedBack({ arrives }: Steps) {
  if (arrives) return undefined;
  const message = 'Over several rounds a nut would have to be turned back, and a wrench never loosens.';
  return invalid('rounds', message, '1 round');
}

function belowSeating(steps: Steps, { seatingN = 0 }: WantedSteps) {
  const least = lowestPull(steps);
  if (least >= seatingN * (1 - ROUNDING)) return undefined;
  const message = `In this order a pull aims at ${Math.floor(least)} N only.`;
  return invalid('seatingN', message, `at most ${Math.floor(least)} N, or another order`);
}

function overCeiling(even: Steps, wanted: WantedSteps, ceilingN: number) {
  const rounds = wanted.orders.length;
  const message = `In ${rounds} round${rounds === 1 ? '' : 's'} a pull aims at ${Math.ceil(highestPull(even))} N.`;
  const enough = wanted.roundShares ? undefined : roundsUnder(wanted, ceilingN);
  const more = enough === undefined ? '' : `, or ${enough} rounds`;
  return invalid('ceilingN', message, `at least ${Math.ceil(highestPull(even))} N${more}`);
}

/** How many rounds hold a ceiling, between as many as do not and the most; undefined where none do. */
function roundsUnder(wanted: WantedSteps, ceilingN: number): number | undefined {
  const once = inOneRound(wanted);
  let [tooFew, enough] = [wanted.orders.length, MOST_ROUNDS];
  if (!holdsIn(enough, wanted, ceilingN, once)) return undefined;
  while (enough - tooFew > 1) {
    const middle = Math.floor((tooFew + enough) / 2);
    if (holdsIn(middle, wanted, ceilingN, once)) enough = middle;
    else tooFew = middle;
  }
  return enough;
}

function holdsIn(rounds: number, wanted: WantedSteps, ceilingN: number, once: Steps): boolean {
  const { joint, finalN } = wanted;
  const orders = Array.from({ length: rounds }, (_, index) => wanted.orders[index] ?? wanted.orders.at(-1)!);
  const longer = { ...wanted, orders };
  if (!joint.later && cappedSteps(joint.first, longer, finalN, ceilingN).arrives) return true;
  return highestPull(evenSteps(joint, longer, finalN, gentlest(longer, once))) <= ceilingN;
}

/** @param once the plan in one round */
function gentlest({ joint, orders, atOnce, finalN, seatingN = 0 }: WantedSteps, once: Steps): readonly number[] {
  const { first, later = first } = joint;
  const least = Math.min(lowestPull(once), ...finalN);
  const laterN: Float64Array[] = [];
  for (const [index, bolts] of orders.entries()) {
    const isSame = index > 1 && bolts === orders[index - 1];
    laterN.push(isSame ? laterN.at(-1)! : highestOnTheWay(later, inGroups(bolts, atOnce), finalN));
  }
  const leastFirst = least > 0 ? Math.min(1, seatingN / least) : 0;
  return gentlestShares({ finalN, firstPeakN: once.peakN, laterN, leastFirst }, orders.length);
}
