import { z } from 'zod';
import { invalid, ok, type Result } from '../../failure/failure.ts';
import { type Remark, remark } from '../../language/mechanics/remark.ts';
import { randomWords } from '../../statistics/random-words.ts';
import { evennessOf } from '../interaction/evenness.ts';
import type { InteractionModel } from '../interaction/model-schema.ts';
import { simulate } from '../interaction/simulate.ts';
import { jointFrom, type SourcedJoint, sourceFields } from '../interaction/source.ts';
import type { SquareMatrix } from '../interaction/square-matrix.ts';
import type { Layout } from '../layout.ts';
import { byMethod } from '../positions-in-order.ts';
import { starOnCircle } from '../star.ts';
import { type OrderProblem, type Progress, type Searched, searchOrders, spreadAfter } from './search-orders.ts';

export const MOST_SEARCHED_ROUNDS = 10;

/** What is asked for when an order is searched. */
export const orderSearchRequestSchema = z.strictObject({
  ...sourceFields,
  targetN: z.number().positive().max(1e9).describe('force aimed at in the last round, N'),
  mostPulls: z.number().int().min(1).max(2000).describe('pulls at most; as many whole rounds as fit in, up to ten'),
  firstShare: z
    .number()
    .gt(0)
    .max(1)
    .default(1)
    .describe('share of the target in the first round; it rises evenly to the last'),
  draws: z
    .number()
    .int()
    .min(0)
    .max(1_000_000)
    .default(20_000)
    .describe('orders tried for each number of rounds, fewer for many bolts; 0 compares the known orders alone'),
  seed: z.number().int().min(0).max(4_294_967_295).default(1).describe('the same seed finds the same'),
});
export type OrderSearchRequest = z.infer<typeof orderSearchRequestSchema>;

export interface RoundsFound {
  readonly rounds: number;
  readonly pulls: number;
  readonly spread: number;
  readonly starSpread: number;
  readonly circularSpread: number;
  readonly order: readonly number[];
}

export interface OrderSearch {
  readonly order: readonly number[];
  readonly rounds: number;
  readonly pulls: number;
  readonly finalN: readonly number[];
  readonly meanN: number;
  readonly spread: number;
  readonly coefficientOfVariation: number;
  readonly minOverTarget: number;
  readonly isExact: boolean;
  readonly tried: number;
  readonly byRounds: readonly RoundsFound[];
  readonly assumptions: readonly Remark[];
}

/** How far a search is, over all numbers of rounds. */
export interface SearchProgress {
  /** 0 to 1. */
  readonly share: number;
  readonly rounds: number;
  /** Positions from 1. */
  readonly order: readonly number[];
  readonly spread: number;
}

/** Searches to the end. Refused with the field that cannot be. */
export function orderSearch(request: OrderSearchRequest): Result<OrderSearch> {
  const search = searching(request);
  if (!search.ok) return search;
  let step = search.value.next();
  while (!step.done) step = search.value.next();
  return ok(step.value);
}

/** A search to be run step by step, such as beside the page: each step says how far it is; to stop, ask no further. */
export function searching(request: OrderSearchRequest): Result<Generator<SearchProgress, OrderSearch>> {
  const joint = jointFrom(request);
  if (!joint.ok) return joint;
  const { count } = joint.value;
  const most = Math.min(MOST_SEARCHED_ROUNDS, Math.floor(request.mostPulls / count));
  if (most < 1) {
    const message = `${request.mostPulls} pulls do not go once over ${count} bolts.`;
    return invalid('mostPulls', message, `at least ${count}`);
  }
  return ok(overRounds(request, joint.value, most));
}

function* overRounds(
  request: OrderSearchRequest,
  joint: SourcedJoint,
  most: number,
): Generator<SearchProgress, OrderSearch> {
  const words = randomWords(request.seed);
  const found: { problem: OrderProblem; searched: Searched }[] = [];
  for (let rounds = 1; rounds <= most; rounds++) {
    const problem = problemOf(request, joint, { rounds, most });
    const before = found.at(-1)?.searched.order;
    const known = before ? [...problem.known, before] : problem.known;
    const search = searchOrders({ ...problem, known }, words);
    let step = search.next();
    while (!step.done) {
      yield toldOf(step.value, rounds, most);
      step = search.next();
    }
    found.push({ problem, searched: step.value });
  }
  return summedUp(request, joint, found);
}

const toldOf = ({ tried, of, best }: Progress, rounds: number, most: number): SearchProgress => ({
  share: (rounds - 1 + tried / of) / most,
  rounds,
  order: best.order.map((bolt) => bolt + 1),
  spread: best.spread,
});

/** Steps of reckoning that a whole search may take, some seconds; a cube of the bolts for each order. */
const MOST_WORK = 8e8;
const FEWEST = 20;

function problemOf(
  request: OrderSearchRequest,
  joint: SourcedJoint,
  { rounds, most }: { readonly rounds: number; readonly most: number },
): OrderProblem {
  const { targetN, firstShare, draws } = request;
  const { count, first, later } = joint;
  const shareIn = (round: number) => (rounds === 1 ? 1 : firstShare + ((1 - firstShare) * round) / (rounds - 1));
  return {
    givingWay: joint,
    count,
    targetsN: Array.from({ length: rounds }, (_, round) => shareIn(round) * targetN),
    isRing: isCirculant(first) && (later === undefined || isCirculant(later)),
    known: [star(request, count), circular(count)],
    draws: Math.min(draws, Math.max(FEWEST, Math.ceil(MOST_WORK / count ** 3 / most))),
  };
}

/** The star over the places of a cover or a bar; bolts of which no place is told are taken to lie on a circle. */
function star({ model }: OrderSearchRequest, count: number): readonly number[] {
  const layout = model && layoutOf(model);
  return (layout ? byMethod(layout, 'star') : starOnCircle(count)).map((position) => position - 1);
}

function layoutOf(model: InteractionModel): Layout | undefined {
  switch (model.kind) {
    case 'plate':
      return model.layout;
    case 'strip':
      return { kind: 'line', count: model.count, pitchMm: model.spacingMm };
    case 'neighbours':
      return model.arrangement === 'line' ? { kind: 'line', count: model.count, pitchMm: 1 } : undefined;
    case 'ring':
      return undefined;
  }
}

const circular = (count: number): readonly number[] => Array.from({ length: count }, (_, bolt) => bolt);

const SAME = 1e-9;

/** Whether each row is the one above, shifted by one. */
function isCirculant({ size, values }: SquareMatrix): boolean {
  for (let i = 0; i < size; i++) {
    for (let j = 0; j < size; j++) {
      const first = values[(j - i + size) % size]!;
      if (Math.abs(values[i * size + j]! - first) > SAME * values[0]!) return false;
    }
  }
  return true;
}

function summedUp(
  request: OrderSearchRequest,
  joint: SourcedJoint,
  found: readonly { readonly problem: OrderProblem; readonly searched: Searched }[],
): OrderSearch {
  const { count } = joint;
  const byRounds = found.map(({ problem, searched }) => ({
    rounds: problem.targetsN.length,
    pulls: problem.targetsN.length * count,
    spread: searched.spread,
    starSpread: spreadAfter(problem, star(request, count)),
    circularSpread: spreadAfter(problem, circular(count)),
    order: searched.order.map((bolt) => bolt + 1),
  }));
  const best = found.reduce((a, b) => (b.searched.spread < a.searched.spread ? b : a));
  const { order } = best.searched;
  const rounds = best.problem.targetsN.map((target) => ({ bolts: order, targetsN: order.map(() => target) }));
  const { finalN } = simulate(joint, rounds);
  return {
    order: order.map((bolt) => bolt + 1),
    rounds: rounds.length,
    pulls: rounds.length * count,
    finalN: [...finalN],
    ...evennessOf(finalN),
    minOverTarget: Math.min(...finalN) / request.targetN,
    isExact: best.searched.isExact,
    tried: found.reduce((sum, { searched }) => sum + searched.tried, 0),
    byRounds,
    assumptions: [...joint.assumptions, remark('one-order')],
  };
}
