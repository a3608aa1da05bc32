import { fillNormal, type Scatter } from './normal-draw.ts';
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

type Fill = (words: RandomWords, column: Float64Array, count: number, about: Scatter) => void;

function fillRectangular(words: RandomWords, column: Float64Array, count: number, about: Scatter): void {
  const width = 2 * HALF_WIDTH.rectangular * about.standardUncertainty;
  const low = about.value - width / 2;
  for (let i = 0; i < count; i++) column[i] = low + width * words.fineFraction();
}

/** @source JCGM 101:2008, 6.4.5: the sum of two draws from equal rectangular distributions */
function fillTriangular(words: RandomWords, column: Float64Array, count: number, about: Scatter): void {
  const width = HALF_WIDTH.triangular * about.standardUncertainty;
  const low = about.value - width;
  for (let i = 0; i < count; i++) column[i] = low + width * (words.fraction() + words.fraction());
}

/** Fill a column with draws about a value. Hot: no allocation, one pass. */
export const FILL: Readonly<Record<Distribution, Fill>> = {
  normal: fillNormal,
  rectangular: fillRectangular,
  triangular: fillTriangular,
};
