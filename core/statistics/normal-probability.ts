/** z at which the normal distribution has 97.5 % below. */
export const Z_95 = 1.959963984540054;

/**
 * Share of the normal distribution of mean 0 and standard deviation 1 below z.
 *
 * @returns within 1e-15 of the share, in the lower tail with twelve right digits
 * @source M. Abramowitz and I. Stegun, Handbook of Mathematical Functions, 26.2.11 (series) and 26.2.14 (continued fraction)
 */
export function shareBelow(z: number): number {
  if (z > 0) return 1 - shareBelow(-z);
  if (z < -38) return 0;
  return z < -3 ? lowerTail(-z) : 0.5 - fromTheMiddle(-z);
}

const density = (z: number): number => Math.exp(-0.5 * z * z) / Math.sqrt(2 * Math.PI);

function fromTheMiddle(z: number): number {
  let term = z;
  let sum = z;
  for (let n = 1; term > sum * 1e-17; n++) {
    term *= (z * z) / (2 * n + 1);
    sum += term;
  }
  return density(z) * sum;
}

function lowerTail(z: number): number {
  let fraction = z;
  for (let n = 160; n > 0; n--) fraction = z + n / fraction;
  return density(z) / fraction;
}
