import { continuedFraction } from './continued-fraction.ts';
import { deviance, stirlingError } from './log-gamma.ts';

const LAST_BIT = 2 ** -54;

/**
 * ln(xᵃ·e⁻ˣ/Γ(a)), which is x times the density of the gamma distribution.
 *
 * @source C. Loader, Fast and accurate computation of binomial probabilities (2000): saddle-point expansion
 */
export const logGammaWeight = (a: number, x: number): number =>
  0.5 * Math.log(a / (2 * Math.PI)) - stirlingError(a) - deviance(a, x);

/**
 * Logarithms of the regularized incomplete gamma functions P(a, x) and Q(a, x); the smaller of both is exact to its last
 * digits however small it is.
 *
 * @param a above 0
 * @param x above 0
 * @source NIST Handbook of Mathematical Functions (2010), 8.11.4 (series) and 8.9.2 (continued fraction)
 */
export const logLowerGamma = (a: number, x: number): number =>
  x < a + 1 ? bySeries(a, x) : complement(byFraction(a, x));

/** @see logLowerGamma */
export const logUpperGamma = (a: number, x: number): number =>
  x < a + 1 ? complement(bySeries(a, x)) : byFraction(a, x);

/** ln(1 − eᵗ). */
export const complement = (logTail: number): number =>
  logTail > -Math.LN2 ? Math.log(-Math.expm1(logTail)) : Math.log1p(-Math.exp(logTail));

function bySeries(a: number, x: number): number {
  let term = 1;
  let sum = 1;
  for (let n = a + 1; term > LAST_BIT * sum; n++) {
    term *= x / n;
    sum += term;
  }
  return Math.min(logGammaWeight(a, x) - Math.log(a) + Math.log(sum), 0);
}

function byFraction(a: number, x: number): number {
  if (x === Infinity) return -Infinity;
  const fraction = continuedFraction(x + 1 - a, {
    numerator: (n) => n * (a - n),
    denominator: (n) => x + 1 - a + 2 * n,
  });
  return Math.min(logGammaWeight(a, x) - Math.log(fraction), 0);
}
