import { atLogOdds, logBetaWeight, logLowerBeta, logUpperBeta } from '../special/incomplete-beta.ts';
import type { Continuous } from './continuous.ts';
import { logOddsQuantile } from './log-odds-quantile.ts';

/**
 * F distribution: ratio of two mean squares.
 *
 * @param above degrees of freedom of the numerator, above 0
 * @param under degrees of freedom of the denominator, above 0
 * @source NIST Handbook of Mathematical Functions (2010), 8.17: I_x(d₁/2, d₂/2) at x = d₁·F/(d₁·F + d₂)
 */
export function fisherF(above: number, under: number): Continuous {
  const [a, b] = [above / 2, under / 2];
  const place = (value: number) => atLogOdds(Math.log((above / under) * value));
  const quantileOf = (lower: number, upper: number): number => {
    if (lower === 0) return 0;
    if (upper === 0) return Infinity;
    return (under / above) * Math.exp(logOddsQuantile(a, b, lower, upper));
  };
  return {
    density: (value) => (value > 0 ? Math.exp(logBetaWeight(a, b, place(value))) / value : atZero(above, value)),
    below: (value) => (value <= 0 ? 0 : Math.exp(logLowerBeta(a, b, place(value)))),
    above: (value) => (value <= 0 ? 1 : Math.exp(logUpperBeta(a, b, place(value)))),
    quantile: (share) => quantileOf(share, 1 - share),
    quantileAbove: (share) => quantileOf(1 - share, share),
  };
}

function atZero(degrees: number, value: number): number {
  if (value < 0 || degrees > 2) return 0;
  return degrees === 2 ? 1 : Infinity;
}
