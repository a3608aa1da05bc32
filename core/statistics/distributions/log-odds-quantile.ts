import { atLogOdds, logBetaWeight, logLowerBeta, logUpperBeta } from '../special/incomplete-beta.ts';
import { invertTail } from '../special/invert-tail.ts';
import { logGamma } from '../special/log-gamma.ts';
import { normal } from './normal.ts';

/**
 * Quantile of the beta distribution as ln(x/(1 − x)), over which its density is log-concave; t and F follow from it
 * without loss at either end.
 *
 * @param lower share below, not 0
 * @param upper share above, not 0; both sum to 1, each exact when it is the smaller one
 */
export function logOddsQuantile(a: number, b: number, lower: number, upper: number, start?: number): number {
  const logDensity = (at: number) => logBetaWeight(a, b, atLogOdds(at));
  const from = start ?? startOf(a, b, lower, upper);
  return lower <= upper
    ? invertTail({ logTail: (at) => logLowerBeta(a, b, atLogOdds(at)), logDensity }, 1, Math.log(lower), from)
    : invertTail({ logTail: (at) => logUpperBeta(a, b, atLogOdds(at)), logDensity }, -1, Math.log(upper), from);
}

/**
 * Abramowitz and Stegun's normal approximation where both parameters are above 1; the first term of the series, which
 * lies on the side from which Newton's steps never go too far, elsewhere.
 *
 * @source M. Abramowitz and I. Stegun, Handbook of Mathematical Functions, 26.5.22
 */
function startOf(a: number, b: number, lower: number, upper: number): number {
  if (a > 1 && b > 1) {
    const z = lower <= upper ? -normal.quantile(lower) : -normal.quantileAbove(upper);
    const [pa, pb] = [1 / (2 * a - 1), 1 / (2 * b - 1)];
    const h = 2 / (pa + pb);
    const lambda = (z * z - 3) / 6;
    const w = (z * Math.sqrt(Math.max(h + lambda, 0))) / h - (pb - pa) * (lambda + 5 / 6 - 2 / (3 * h));
    return Math.log(a / b) - 2 * w;
  }
  const logB = logGamma(a) + logGamma(b) - logGamma(a + b);
  return lower <= upper ? (Math.log(lower * a) + logB) / a : -(Math.log(upper * b) + logB) / b;
}
