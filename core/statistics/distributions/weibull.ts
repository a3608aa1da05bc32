import type { Continuous } from './continuous.ts';

/**
 * Weibull distribution; of shape 1 it is exponential.
 *
 * @param shape above 0; below 1 what fails fails early, above 1 it wears
 * @param scale above 0: where the share e⁻¹ is left
 * @source NIST/SEMATECH e-Handbook of Statistical Methods, 8.1.6.2
 */
export function weibull(shape: number, scale: number): Continuous {
  const hazard = (x: number) => (x / scale) ** shape;
  return {
    density: (x) => (x > 0 ? ((shape * hazard(x)) / x) * Math.exp(-hazard(x)) : atZero(shape, scale, x)),
    below: (x) => (x <= 0 ? 0 : -Math.expm1(-hazard(x))),
    above: (x) => (x <= 0 ? 1 : Math.exp(-hazard(x))),
    quantile: (share) => scale * (-Math.log1p(-share)) ** (1 / shape),
    quantileAbove: (share) => scale * (-Math.log(share)) ** (1 / shape),
  };
}

/** Exponential distribution of a mean. */
export const exponential = (mean: number): Continuous => weibull(1, mean);

function atZero(shape: number, scale: number, x: number): number {
  if (x < 0 || shape > 1) return 0;
  return shape === 1 ? 1 / scale : Infinity;
}
