import type { Found } from './history.ts';

/**
 * Cut after a calibration that was found out, such that extensions and cuts balance where the wanted share is found in:
 * (1 + extension)^R·(1 − cut)^(1 − R) = 1.
 *
 * @param extension after one found in, such as 0.1
 * @param share     R, wanted to be found in, below 1
 * @source D. W. Wyatt and H. T. Castrup, Managing calibration intervals (1991): simple response method
 */
export const cutFor = (extension: number, share: number): number => 1 - (1 + extension) ** (-share / (1 - share));

/**
 * What the last calibration makes of an interval.
 *
 * @source ILAC-G24:2007 / OIML D 10, method 1: automatic adjustment or staircase
 */
export function stepOf(history: readonly Found[], extension: number, share: number): number {
  const isIn = history.at(-1)?.found !== 'out';
  return isIn ? 1 + extension : 1 - cutFor(extension, share);
}
