/** A share of a whole as it lies on a bar. */
export interface BarPart {
  readonly left: number;
  readonly width: number;
}

/**
 * Parts one bar by shares, in their order and without a gap.
 *
 * @param shares each at least 0; they need not add up to one, the bar is filled all the same
 * @param width  of the whole bar
 */
export function partBar(shares: readonly number[], width: number): readonly BarPart[] {
  const whole = shares.reduce((sum, share) => sum + share, 0);
  let left = 0;
  return shares.map((share) => {
    const part = { left, width: whole > 0 ? (share / whole) * width : 0 };
    left += part.width;
    return part;
  });
}
