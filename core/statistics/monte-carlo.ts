import { type Distribution, FILL } from './distribution.ts';
import { coverageIntervals, type Interval } from './order-statistics.ts';
import { randomWords } from './random-words.ts';

/** A quantity that goes into a model: its best estimate, and how it may lie about it. */
export interface Uncertain {
  readonly value: number;
  /** 0 for a quantity that is exact. */
  readonly standardUncertainty: number;
  readonly distribution: Distribution;
}

/**
 * Works out a block of results; `columns[k][i]` is the draw of the k-th quantity, `results[from + i]` what comes of it.
 * Called a thousand times for a million draws: no allocation inside.
 */
export type Model = (columns: readonly Float64Array[], results: Float64Array, from: number, count: number) => void;

export interface MonteCarloInput {
  readonly quantities: readonly Uncertain[];
  /** Pairs of quantities of one distribution that rise and fall together. */
  readonly together?: readonly (readonly [leader: number, follower: number])[];
  readonly model: Model;
  readonly draws: number;
  readonly seed: number;
}

export interface MonteCarloResult {
  readonly mean: number;
  readonly standardUncertainty: number;
  readonly interval95: Interval;
  readonly shortest95: Interval;
  /** All but one draw in a thousand. */
  readonly bulk: Interval;
  /** The draws themselves, in no order. */
  readonly results: Float64Array;
}

/** Columns of a few quantities stay in the processor's nearest memory. */
const BLOCK = 1024;

/**
 * Propagates distributions through a model by drawing from them.
 *
 * @returns mean, standard deviation and the intervals that hold 95 % of the draws
 * @source JCGM 101:2008, clause 7
 */
export function monteCarlo(input: MonteCarloInput): MonteCarloResult {
  const results = drawnResults(input);
  const { mean, standardUncertainty } = momentsOf(results);
  const { symmetric, shortest, bulk } = coverageIntervals(results, 0.95);
  return { mean, standardUncertainty, interval95: symmetric, shortest95: shortest, bulk, results };
}

/** The results of all draws, one after the other. */
export function drawnResults({ quantities, together = [], model, draws, seed }: MonteCarloInput): Float64Array {
  const words = randomWords(seed);
  const columns = quantities.map(({ value }) => new Float64Array(BLOCK).fill(value));
  const leaderOf = new Map(together.map(([leader, follower]) => [follower, leader] as const));
  const uncertain = [...quantities.entries()].filter(([, { standardUncertainty: u }]) => u > 0);
  const results = new Float64Array(draws);
  for (let from = 0; from < draws; from += BLOCK) {
    const count = Math.min(BLOCK, draws - from);
    for (const [index, quantity] of uncertain) {
      const leader = leaderOf.get(index);
      const column = columns[index]!;
      if (leader === undefined) FILL[quantity.distribution](words, column, count, quantity);
      else follow(columns[leader]!, quantities[leader]!, column, quantity, count);
    }
    model(columns, results, from, count);
  }
  return results;
}

/** The follower lies as many standard deviations off as the leader. */
function follow(led: Float64Array, leader: Uncertain, column: Float64Array, follower: Uncertain, count: number): void {
  const ratio = follower.standardUncertainty / leader.standardUncertainty;
  for (let i = 0; i < count; i++) column[i] = follower.value + ratio * (led[i]! - leader.value);
}

/** Two passes: the sum of squares about the mean loses no digits. */
function momentsOf(results: Float64Array): { readonly mean: number; readonly standardUncertainty: number } {
  const count = results.length;
  let sum = 0;
  for (let i = 0; i < count; i++) sum += results[i]!;
  const mean = sum / count;
  let squares = 0;
  for (let i = 0; i < count; i++) squares += (results[i]! - mean) ** 2;
  return { mean, standardUncertainty: Math.sqrt(squares / (count - 1)) };
}
