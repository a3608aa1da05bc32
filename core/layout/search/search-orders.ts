import type { RandomWords } from '../../statistics/random-words.ts';
import { evennessOf } from '../interaction/evenness.ts';
import { type GivingWay, simulate } from '../interaction/simulate.ts';

/** What is searched: the order, the same in every round, that leaves the forces most even. Bolts from 0. */
export interface OrderProblem {
  readonly givingWay: GivingWay;
  readonly count: number;
  /** Target of each round. */
  readonly targetsN: readonly number[];
  /** Every bolt has the same neighbours, so that the first one may stay where it is. */
  readonly isRing: boolean;
  /** Orders to begin with. */
  readonly known: readonly (readonly number[])[];
  /** Orders drawn at most; where there are no more than three times as many, all are tried. */
  readonly draws: number;
}

export interface Progress {
  readonly tried: number;
  readonly of: number;
  readonly best: Found;
}

export interface Found {
  readonly order: readonly number[];
  readonly spread: number;
}

export interface Searched extends Found {
  readonly tried: number;
  readonly isExact: boolean;
}

const TRIES_BETWEEN_NEWS = 200;
/** To know that it is the best is worth so many times the draws. */
const WORTH_OF_ALL = 3;

/**
 * Searches step by step: yields how far it is, so that whoever runs it can show that and stop; returns the best.
 * All orders are tried where they are few, simulated annealing goes on from the best known order where they are many.
 *
 * @source Kirkpatrick, Gelatt and Vecchi, Science 220 (1983) 671: annealing (from memory); schedule and moves ours
 */
export function* searchOrders(problem: OrderProblem, words: RandomWords): Generator<Progress, Searched> {
  const all = ordersOf(problem.isRing ? problem.count - 1 : problem.count);
  return all <= Math.max(WORTH_OF_ALL * problem.draws, 1) ? yield* tryAll(problem, all) : yield* anneal(problem, words);
}

/** n!, or infinite where nobody would try them all. */
export function ordersOf(count: number): number {
  let orders = 1;
  for (let n = 2; n <= count; n++) orders *= n;
  return count > 12 ? Number.POSITIVE_INFINITY : orders;
}

/** Spread that an order leaves after all rounds. */
export function spreadAfter({ givingWay, targetsN }: OrderProblem, order: readonly number[]): number {
  const rounds = targetsN.map((target) => ({ bolts: order, targetsN: order.map(() => target) }));
  return evennessOf(simulate(givingWay, rounds).finalN).spread;
}

function* tryAll(problem: OrderProblem, all: number): Generator<Progress, Searched> {
  const order = Array.from({ length: problem.count }, (_, bolt) => bolt);
  const first = problem.isRing ? 1 : 0;
  let best: Found = { order: [...order], spread: spreadAfter(problem, order) };
  let tried = 1;
  while (toNextOrder(order, first)) {
    const spread = spreadAfter(problem, order);
    if (spread < best.spread) best = { order: [...order], spread };
    tried += 1;
    if (tried % TRIES_BETWEEN_NEWS === 0) yield { tried, of: all, best };
  }
  return { ...best, tried, isExact: true };
}

/** The next order by the alphabet, behind the places that stay; false after the last. */
function toNextOrder(order: number[], first: number): boolean {
  let i = order.length - 2;
  while (i >= first && order[i]! > order[i + 1]!) i--;
  if (i < first) return false;
  let j = order.length - 1;
  while (order[j]! < order[i]!) j--;
  [order[i], order[j]] = [order[j]!, order[i]!];
  for (let a = i + 1, b = order.length - 1; a < b; a++, b--) [order[a], order[b]] = [order[b]!, order[a]!];
  return true;
}

/** Warmth at the start and the end, as a share of the spread that the search begins with. */
const HOT = 0.2;
const COLD = 1e-3;
/** So often the search begins anew from its best. */
const BEGINNINGS = 3;

function* anneal(problem: OrderProblem, words: RandomWords): Generator<Progress, Searched> {
  const known = problem.known.map((order) => ({ order, spread: spreadAfter(problem, order) }));
  let best = known.reduce((a, b) => (b.spread < a.spread ? b : a));
  const scale = best.spread || 1;
  const each = Math.ceil(problem.draws / BEGINNINGS);
  let now: Found = best;
  for (let tried = 1; tried <= problem.draws; tried++) {
    const at = (tried - 1) % each;
    if (at === 0) now = best;
    const warmth = scale * HOT * (COLD / HOT) ** (at / each);
    const order = moved(now.order, problem.isRing ? 1 : 0, words);
    const spread = spreadAfter(problem, order);
    if (spread <= now.spread || words.fraction() < Math.exp((now.spread - spread) / warmth)) now = { order, spread };
    if (now.spread < best.spread) best = now;
    if (tried % TRIES_BETWEEN_NEWS === 0) yield { tried, of: problem.draws, best };
  }
  return { ...best, tried: problem.draws, isExact: false };
}

/** Two bolts change places, one moves elsewhere, or a stretch is turned round. */
function moved(order: readonly number[], first: number, words: RandomWords): readonly number[] {
  const pick = () => first + Math.floor(words.fraction() * (order.length - first));
  const [one, other] = [pick(), pick()];
  const [a, b] = [Math.min(one, other), Math.max(one, other)];
  const kind = words.fraction();
  const next = [...order];
  if (kind < 0.4) [next[a], next[b]] = [next[b]!, next[a]!];
  else if (kind < 0.8) next.splice(b, 0, ...next.splice(a, 1));
  else next.splice(a, b - a + 1, ...next.slice(a, b + 1).toReversed());
  return next;
}
