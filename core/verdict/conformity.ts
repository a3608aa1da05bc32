import { shareBelow } from '../statistics/distributions/normal.ts';

/** Limits of a quantity, in its own unit; at least one of them. */
export interface Limits {
  readonly lower?: number | undefined;
  readonly upper?: number | undefined;
}

/** How probable it is that the true value lies on either side of the limits; all three together are 1. */
export interface Conformity {
  readonly inside: number;
  readonly below: number;
  readonly above: number;
}

/**
 * How probably a measured value lies inside its limits, its true value being normal about it.
 *
 * @param standardUncertainty in the unit of the value; with 0 it is certain, a value on a limit counting as inside
 * @returns each share worked out from its own tail, so that a small one keeps its digits
 * @source JCGM 106:2012, 7.3.1 and 7.3.2: p_c = Φ((T_U − y)/u) − Φ((T_L − y)/u)
 */
export function conformityOf(value: number, standardUncertainty: number, { lower, upper }: Limits): Conformity {
  const below = lower === undefined ? 0 : tail((lower - value) / standardUncertainty, lower > value);
  const above = upper === undefined ? 0 : tail((value - upper) / standardUncertainty, value > upper);
  return { inside: inside(value, standardUncertainty, { lower, upper }), below, above };
}

/** Without uncertainty the quotient is no number on the limit itself, and endless elsewhere. */
const tail = (z: number, isBeyond: boolean): number => (Number.isFinite(z) ? shareBelow(z) : Number(isBeyond));

/** The share between two limits by its smaller side: neither is 1 less something tiny, where it can be helped. */
function inside(value: number, u: number, { lower, upper }: Limits): number {
  if (u === 0) return Number((lower === undefined || value >= lower) && (upper === undefined || value <= upper));
  const [low, high] = [
    lower === undefined ? Number.NEGATIVE_INFINITY : (lower - value) / u,
    upper === undefined ? Number.POSITIVE_INFINITY : (upper - value) / u,
  ];
  if (low > 0) return Math.max(0, shareBelow(-low) - shareBelow(-high));
  return Math.max(0, shareBelow(high) - shareBelow(low));
}
