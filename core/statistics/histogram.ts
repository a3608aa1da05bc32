import type { Interval } from './order-statistics.ts';

/**
 * Counts values in bins of equal width; what lies outside of the ends is not counted.
 *
 * @returns one count a bin, from low to high; a single value that all share falls into the first
 */
export function histogram(values: Float64Array, [low, high]: Interval, bins: number): readonly number[] {
  const counts = new Uint32Array(bins);
  const perUnit = high > low ? bins / (high - low) : 0;
  for (let i = 0; i < values.length; i++) {
    const value = values[i]!;
    if (value < low || value > high) continue;
    const bin = Math.min(Math.floor((value - low) * perUnit), bins - 1);
    counts[bin] = counts[bin]! + 1;
  }
  return [...counts];
}

/** Share of values below a limit. */
export function shareUnder(values: Float64Array, limit: number): number {
  let count = 0;
  for (let i = 0; i < values.length; i++) if (values[i]! < limit) count++;
  return count / values.length;
}
