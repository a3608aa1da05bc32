import { logGammaWeight, logLowerGamma, logUpperGamma } from '../special/incomplete-gamma.ts';
import { invertTail } from '../special/invert-tail.ts';
import { logGamma } from '../special/log-gamma.ts';
import type { Continuous } from './continuous.ts';
import { normal } from './normal.ts';

/**
 * Gamma distribution.
 *
 * @param shape above 0
 * @param scale above 0, in the unit of the values
 */
export function gamma(shape: number, scale: number): Continuous {
  const quantileOf = (lower: number, upper: number): number => {
    if (lower === 0) return 0;
    if (upper === 0) return Infinity;
    return scale * Math.exp(logQuantile(shape, lower, upper));
  };
  return {
    density: (x) => densityAt(shape, x / scale) / scale,
    below: (x) => (x <= 0 ? 0 : Math.exp(logLowerGamma(shape, x / scale))),
    above: (x) => (x <= 0 ? 1 : Math.exp(logUpperGamma(shape, x / scale))),
    quantile: (share) => quantileOf(share, 1 - share),
    quantileAbove: (share) => quantileOf(1 - share, share),
  };
}

/** Chi-square distribution of a number of degrees of freedom, which need not be whole. */
export const chiSquare = (degrees: number): Continuous => gamma(degrees / 2, 2);

function densityAt(shape: number, x: number): number {
  if (x > 0) return Math.exp(logGammaWeight(shape, x)) / x;
  if (x < 0 || shape > 1) return 0;
  return shape === 1 ? 1 : Infinity;
}

/** Solved over ln x, where the density is log-concave. */
function logQuantile(shape: number, lower: number, upper: number): number {
  const logDensity = (at: number) => logGammaWeight(shape, Math.exp(at));
  const start = startOf(shape, lower, upper);
  return lower <= upper
    ? invertTail({ logTail: (at) => logLowerGamma(shape, Math.exp(at)), logDensity }, 1, Math.log(lower), start)
    : invertTail({ logTail: (at) => logUpperGamma(shape, Math.exp(at)), logDensity }, -1, Math.log(upper), start);
}

/** Where Wilson and Hilferty's cube lies, or where the first term of the series does when the cube is no use. */
function startOf(shape: number, lower: number, upper: number): number {
  const z = lower <= upper ? normal.quantile(lower) : normal.quantileAbove(upper);
  const cube = 1 - 1 / (9 * shape) + z / (3 * Math.sqrt(shape));
  const firstTerm = (Math.log(lower) + logGamma(shape + 1)) / shape;
  return cube > 0.3 ? Math.log(shape) + 3 * Math.log(cube) : firstTerm;
}
