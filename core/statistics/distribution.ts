import { fillNormal } from './normal-draw.ts';
import type { RandomWords } from './random-words.ts';

/** What is known of a quantity that is not known exactly. */
export const DISTRIBUTIONS = ['normal', 'rectangular', 'triangular'] as const;
export type Distribution = (typeof DISTRIBUTIONS)[number];

/**
 * Half width over standard deviation of the distributions that end.
 *
 * @source JCGM 100:2008, 4.3.7 and 4.3.9: a/√3 and a/√6
 */
export const HALF_WIDTH: Readonly<Record<Distribution, number>> = {
  normal: Infinity,
  rectangular: Math.sqrt(3),
  triangular: Math.sqrt(6),
};

type Fill = (words: RandomWords, column: Float64Array, count: number) => void;

function fillRectangular(words: RandomWords, column: Float64Array, count: number): void {
  const width = 2 * HALF_WIDTH.rectangular;
  for (let i = 0; i < count; i++) column[i] = (words.fineFraction() - 0.5) * width;
}

/** @source JCGM 101:2008, 6.4.5: the sum of two draws from equal rectangular distributions */
function fillTriangular(words: RandomWords, column: Float64Array, count: number): void {
  const width = HALF_WIDTH.triangular;
  for (let i = 0; i < count; i++) column[i] = (words.fraction() + words.fraction() - 1) * width;
}

/** Fill a column with draws of mean 0 and standard deviation 1. Hot: no allocation, one pass. */
export const FILL: Readonly<Record<Distribution, Fill>> = {
  normal: fillNormal,
  rectangular: fillRectangular,
  triangular: fillTriangular,
};
