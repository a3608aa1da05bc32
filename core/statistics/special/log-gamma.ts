const EULER = 0.577_215_664_901_532_9;
const LAST_BIT = 2 ** -54;
const HALF_LOG_TWO_PI = 0.918_938_533_204_672_8;

/** ζ(k) − 1 from k = 2. */
const ZETA_LESS_ONE = [
  0.6449340668482264, 0.2020569031595943, 0.08232323371113819, 0.03692775514336993, 0.01734306198444914,
  0.008349277381922827, 0.00407735619794434, 0.0020083928260822143, 0.0009945751278180853, 0.0004941886041194645,
  0.0002460865533080483, 0.00012271334757848915, 0.00006124813505870483, 0.00003058823630702049, 0.00001528225940865187,
  0.000007637197637899763, 0.00000381729326499984, 0.000001908212716553939, 9.539620338727962e-7, 4.769329867878064e-7,
  2.38450502727733e-7, 1.1921992596531106e-7, 5.960818905125948e-8, 2.980350351465228e-8,
] as const;

/** B_2k/(2k·(2k − 1)) from k = 1. */
const STIRLING = [1 / 12, -1 / 360, 1 / 1260, -1 / 1680, 1 / 1188, -691 / 360360, 1 / 156, -3617 / 122400] as const;

/** From here on eight terms of Stirling's series are exact to the last digit. */
const LARGE = 10;

/**
 * Natural logarithm of the gamma function, also next to its zeros at 1 and 2.
 *
 * @param x above 0
 * @source NIST Handbook of Mathematical Functions (2010), 5.7.3 and 5.11.1
 */
export function logGamma(x: number): number {
  if (x >= LARGE) return (x - 0.5) * Math.log(x) - x + HALF_LOG_TWO_PI + stirlingSeries(x);
  if (x < 0.5) return aboutTwo(x) - Math.log(x) - Math.log1p(x);
  if (x < 1.5) return aboutTwo(x - 1) - Math.log1p(x - 1);
  let product = 1;
  let left = x;
  while (left > 2.5) {
    left -= 1;
    product *= left;
  }
  return aboutTwo(left - 2) + Math.log(product);
}

/** ln Γ(2 + z), |z| up to a half. */
function aboutTwo(z: number): number {
  let sum = 0;
  for (let k = ZETA_LESS_ONE.length - 1; k >= 0; k--) sum = ZETA_LESS_ONE[k]! / (k + 2) - z * sum;
  return z * (1 - EULER + z * sum);
}

/**
 * What Stirling's formula leaves of ln Γ(x + 1): ln Γ(x + 1) − (x + ½)·ln x + x − ½·ln 2π.
 *
 * @source C. Loader, Fast and accurate computation of binomial probabilities (2000)
 */
export function stirlingError(x: number): number {
  if (x >= LARGE) return stirlingSeries(x);
  return logGamma(x + 1) - (x + 0.5) * Math.log(x) + x - HALF_LOG_TWO_PI;
}

function stirlingSeries(x: number): number {
  const square = 1 / (x * x);
  let sum = 0;
  for (let k = STIRLING.length - 1; k >= 0; k--) sum = STIRLING[k]! + square * sum;
  return sum / x;
}

/**
 * x·ln(x/m) + m − x, without loss where both are close.
 *
 * @source C. Loader, as above: deviance part of the saddle-point expansion
 */
export function deviance(x: number, m: number): number {
  const gap = x - m;
  if (Math.abs(gap) >= 0.1 * (x + m)) return x * Math.log(x / m) - gap;
  const ratio = gap / (x + m);
  const square = ratio * ratio;
  let term = 2 * x * ratio;
  let sum = gap * ratio;
  for (let odd = 3; Math.abs(term) > LAST_BIT * Math.abs(sum); odd += 2) {
    term *= square;
    sum += term / odd;
  }
  return sum;
}
