/** What one even step costs in height. */
export interface StepHeights {
  readonly finalN: readonly number[];
  /** Largest force while the first round goes to the end at once. */
  readonly firstPeakN: number;
  /** How high each bolt comes in a later round from nothing to the end, by round; the first is not used. */
  readonly laterN: readonly Float64Array[];
  /** The first share may not be less. */
  readonly leastFirst: number;
}

const HALVINGS = 60;

/**
 * Shares of the final force after each round that keep the largest force on the way lowest.
 *
 * @returns rising, the last 1
 */
export function gentlestShares(heights: StepHeights, rounds: number): readonly number[] {
  const { finalN, firstPeakN, leastFirst } = heights;
  if (rounds === 1) return [1];
  let low = Math.max(...finalN, leastFirst * firstPeakN);
  let high = Math.max(firstPeakN, low);
  for (let n = 0; n < HALVINGS; n++) {
    const middle = (low + high) / 2;
    if (sharesUnder(middle, heights, rounds).at(-1)! >= 1) high = middle;
    else low = middle;
  }
  return sharesUnder(high, heights, rounds).map((share, round) => (round === rounds - 1 ? 1 : Math.min(1, share)));
}

/** As far as each round can go under a ceiling, which is high enough for the least first share. */
function sharesUnder(ceilingN: number, { finalN, firstPeakN, laterN }: StepHeights, rounds: number): number[] {
  const shares = [ceilingN / firstPeakN];
  while (shares.length < rounds) {
    const from = shares.at(-1)!;
    const highest = laterN[shares.length]!;
    let step = Number.POSITIVE_INFINITY;
    for (const [bolt, end] of finalN.entries()) {
      const rise = highest[bolt]!;
      if (rise > 0) step = Math.min(step, (ceilingN - from * end) / rise);
    }
    shares.push(from + Math.max(0, step));
  }
  return shares;
}
