import { shareBelow, Z_95 } from '../../statistics/distributions/normal.ts';
import type { Interval } from '../../statistics/order-statistics.ts';
import { propagate } from '../../statistics/propagate.ts';
import type { PreloadModel } from './preload-quantities.ts';

/** What one quantity has of the uncertainty. */
export interface Contribution {
  /** Field of the input. */
  readonly quantity: string;
  readonly value: number;
  readonly standardUncertainty: number;
  /** Newtons of preload for one unit of the quantity. */
  readonly sensitivity: number;
  readonly contributionN: number;
  /** Of the variance; all together 1. */
  readonly share: number;
}

/** Scatter of a preload, and what of it lies outside of a window. */
export interface ScatteredPreload {
  readonly standardUncertaintyN: number;
  readonly interval95N: Interval;
  readonly probabilityBelowN?: number;
  readonly probabilityAboveN?: number;
}

export interface PropagatedPreload extends ScatteredPreload {
  readonly preloadN: number;
}

/** Window of the preload. */
export interface PreloadWindow {
  readonly lowerPreloadN?: number | undefined;
  readonly upperPreloadN?: number | undefined;
}

/**
 * By the law of propagation, the preload taken as normal.
 *
 * @source JCGM 100:2008, 5.1.2, 5.2.2 and G.1.3
 */
export function byPropagation(
  { lowerPreloadN, upperPreloadN }: PreloadWindow,
  preloadN: number,
  { names, quantities, sensitivities }: PreloadModel,
  together: readonly (readonly [number, number])[],
): PropagatedPreload & { readonly contributions: readonly Contribution[] } {
  const sensitive = quantities.map(({ standardUncertainty }, index) => ({
    standardUncertainty,
    sensitivity: sensitivities[index] ?? 0,
  }));
  const { standardUncertainty, shares } = propagate(
    sensitive,
    together.map(([i, j]) => [i, j, 1] as const),
  );
  const below = (limitN: number): number => {
    if (standardUncertainty > 0) return shareBelow((limitN - preloadN) / standardUncertainty);
    return preloadN < limitN ? 1 : 0;
  };
  return {
    preloadN,
    standardUncertaintyN: standardUncertainty,
    interval95N: [preloadN - Z_95 * standardUncertainty, preloadN + Z_95 * standardUncertainty],
    ...(lowerPreloadN === undefined ? {} : { probabilityBelowN: below(lowerPreloadN) }),
    ...(upperPreloadN === undefined ? {} : { probabilityAboveN: 1 - below(upperPreloadN) }),
    contributions: names.flatMap((quantity, index) => {
      const { value = 0, standardUncertainty: own = 0 } = quantities[index] ?? {};
      const sensitivity = sensitivities[index] ?? 0;
      const contributionN = Math.abs(sensitivity) * own;
      const share = shares[index] ?? 0;
      return own === 0 ? [] : [{ quantity, value, standardUncertainty: own, sensitivity, contributionN, share }];
    }),
  };
}
