import { histogram, shareUnder } from '../../statistics/histogram.ts';
import { monteCarlo } from '../../statistics/monte-carlo.ts';
import type { Interval } from '../../statistics/order-statistics.ts';
import type { PreloadWindow, ScatteredPreload } from './by-propagation.ts';
import type { PreloadModel } from './preload-quantities.ts';

export interface DrawnPreload extends ScatteredPreload {
  readonly draws: number;
  readonly seed: number;
  readonly meanN: number;
  /** The shortest interval that holds 95 % of the draws. */
  readonly shortest95N: Interval;
  /** Counts in bins of equal width; one draw in a thousand lies outside of the ends. */
  readonly histogram: { readonly fromN: number; readonly toN: number; readonly counts: readonly number[] };
}

const BINS = 60;

/**
 * By drawing from the distributions.
 *
 * @source JCGM 101:2008, clause 7
 */
export function byDrawing(
  { lowerPreloadN, upperPreloadN, draws, seed }: PreloadWindow & { readonly draws: number; readonly seed: number },
  { quantities, model }: PreloadModel,
  together: readonly (readonly [number, number])[],
): DrawnPreload {
  const drawn = monteCarlo({ quantities, together, model, draws, seed });
  const [fromN, toN] = drawn.bulk;
  return {
    draws,
    seed,
    meanN: drawn.mean,
    standardUncertaintyN: drawn.standardUncertainty,
    interval95N: drawn.interval95,
    shortest95N: drawn.shortest95,
    ...(lowerPreloadN === undefined ? {} : { probabilityBelowN: shareUnder(drawn.results, lowerPreloadN) }),
    ...(upperPreloadN === undefined ? {} : { probabilityAboveN: 1 - shareUnder(drawn.results, upperPreloadN) }),
    histogram: { fromN, toN, counts: histogram(drawn.results, drawn.bulk, BINS) },
  };
}
