import { continuedFraction } from './continued-fraction.ts';
import { complement } from './incomplete-gamma.ts';
import { deviance, stirlingError } from './log-gamma.ts';

/** A place between 0 and 1 by its distances from both ends and their logarithms, so that neither end loses digits. */
export interface Split {
  readonly x: number;
  /** 1 − x. */
  readonly y: number;
  readonly logX: number;
  readonly logY: number;
}

/** Place with the log-odds ln(x/(1 − x)). */
export function atLogOdds(logOdds: number): Split {
  const smaller = Math.exp(-Math.abs(logOdds));
  const logLarger = -Math.log1p(smaller);
  const logSmaller = logLarger - Math.abs(logOdds);
  const larger = 1 / (1 + smaller);
  return logOdds < 0
    ? { x: smaller * larger, y: larger, logX: logSmaller, logY: logLarger }
    : { x: larger, y: smaller * larger, logX: logLarger, logY: logSmaller };
}

const mirrored = ({ x, y, logX, logY }: Split): Split => ({ x: y, y: x, logX: logY, logY: logX });

/**
 * ln(xᵃ·yᵇ/B(a, b)), which is x·y times the density of the beta distribution.
 *
 * @source C. Loader, Fast and accurate computation of binomial probabilities (2000): saddle-point expansion
 */
export function logBetaWeight(a: number, b: number, { x, y, logX, logY }: Split): number {
  const n = a + b;
  const errors = stirlingError(n) - stirlingError(a) - stirlingError(b);
  const ways = 0.5 * (Math.log(a / n) + Math.log(b / (2 * Math.PI)));
  return ways + errors - devianceAt(a, n, x, logX) - devianceAt(b, n, y, logY);
}

/** Deviance from n·x, also where x is too small for a number. */
const devianceAt = (a: number, n: number, x: number, logX: number): number =>
  x > 1e-290 ? deviance(a, n * x) : a * (Math.log(a / n) - logX - 1);

/**
 * Logarithm of the regularized incomplete beta function I_x(a, b); exact to its last digits where it is below a half.
 *
 * @param a above 0
 * @param b above 0
 * @source NIST Handbook of Mathematical Functions (2010), 8.17.22
 */
export const logLowerBeta = (a: number, b: number, place: Split): number =>
  place.x * (a + b + 2) < a + 1 ? byFraction(a, b, place) : complement(byFraction(b, a, mirrored(place)));

/** Logarithm of 1 − I_x(a, b). */
export const logUpperBeta = (a: number, b: number, place: Split): number => logLowerBeta(b, a, mirrored(place));

function byFraction(a: number, b: number, place: Split): number {
  const { x } = place;
  const fraction = continuedFraction(1, {
    numerator: (step) => {
      const m = Math.floor(step / 2);
      const odd = step % 2 === 1;
      return odd
        ? (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1))
        : (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m));
    },
    denominator: () => 1,
  });
  return Math.min(logBetaWeight(a, b, place) - Math.log(a) - Math.log(fraction), 0);
}
