import type { PlotPoint } from './plot.ts';

/** Beyond so many standard deviations a bell is flat on paper. */
const REACH = 4;
const STEPS = 120;

/**
 * A bell as points of a line.
 *
 * @param mean  its middle
 * @param sigma standard deviation, above 0
 * @param cuts  further x at which a point must lie, so that a part can be cut off there exactly
 * @returns ascending in x; the height is 1 in the middle
 */
export function bell(mean: number, sigma: number, cuts: readonly number[] = []): readonly PlotPoint[] {
  const even = Array.from({ length: STEPS + 1 }, (_, step) => mean + sigma * REACH * ((2 * step) / STEPS - 1));
  const inside = cuts.filter((cut) => Math.abs(cut - mean) < REACH * sigma);
  return [...new Set([...even, ...inside])]
    .toSorted((a, b) => a - b)
    .map((x) => ({ x, y: Math.exp(-0.5 * ((x - mean) / sigma) ** 2) }));
}
