const TINY = 1e-300;
const LAST_BIT = 2 ** -53;
const MOST_STEPS = 1_000_000;

/** Numerator and denominator of each step of a continued fraction, from 1. */
export interface Steps {
  readonly numerator: (step: number) => number;
  readonly denominator: (step: number) => number;
}

/**
 * Value of first + n₁/(d₁ + n₂/(d₂ + …)).
 *
 * @source NIST Handbook of Mathematical Functions (2010), 3.10(iii): the way of Lentz, as bettered by Thompson and Barnett
 */
export function continuedFraction(first: number, { numerator, denominator }: Steps): number {
  let value = first === 0 ? TINY : first;
  let upper = value;
  let lower = 0;
  for (let step = 1; step < MOST_STEPS; step++) {
    const n = numerator(step);
    const d = denominator(step);
    lower = d + n * lower;
    lower = 1 / (lower === 0 ? TINY : lower);
    upper = d + n / upper;
    if (upper === 0) upper = TINY;
    const factor = upper * lower;
    value *= factor;
    if (!(Math.abs(factor - 1) > 2 * LAST_BIT)) return value;
  }
  return value;
}
