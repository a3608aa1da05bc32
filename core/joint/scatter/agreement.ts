import type { ScatteredPreload } from './by-propagation.ts';

/** Whether two ways to the same uncertainty come to the same interval. */
export interface Agreement {
  readonly agree: boolean;
  /** How far the ends may lie apart. */
  readonly toleranceN: number;
  readonly lowDifferenceN: number;
  readonly highDifferenceN: number;
}

/**
 * Compares the ends of the two intervals.
 *
 * @param digits of the uncertainty that mean something. A million draws settle one digit always, two mostly.
 * @source JCGM 101:2008, 7.9.2 and 8.1: δ is half a unit of the last of those digits
 */
export function agreementOf(propagated: ScatteredPreload, drawn: ScatteredPreload, digits: 1 | 2): Agreement {
  const toleranceN = numericalTolerance(drawn.standardUncertaintyN, digits);
  const lowDifferenceN = Math.abs(propagated.interval95N[0] - drawn.interval95N[0]);
  const highDifferenceN = Math.abs(propagated.interval95N[1] - drawn.interval95N[1]);
  const agree = lowDifferenceN <= toleranceN && highDifferenceN <= toleranceN;
  return { agree, toleranceN, lowDifferenceN, highDifferenceN };
}

/** u = c·10^l with c of so many digits gives δ = ½·10^l; an exact figure has to agree but for rounding. */
function numericalTolerance(standardUncertainty: number, digits: number): number {
  if (standardUncertainty < 1e-6) return 1e-6;
  const [, exponent = '0'] = standardUncertainty.toExponential(digits - 1).split('e');
  return 0.5 * 10 ** (Number(exponent) - (digits - 1));
}
