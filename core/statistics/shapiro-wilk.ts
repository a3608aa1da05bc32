import { normal, shareAbove } from './distributions/normal.ts';

/** What a test of normality says. */
export interface NormalityTest {
  readonly statistic: number;
  /** Probability of a statistic this far off or farther, if the values came from a normal distribution. */
  readonly p: number;
}

/** Sizes for which Royston's approximation was made. */
export const SHAPIRO_WILK_SIZES = { from: 3, to: 5000 } as const;

// Royston's polynomials: corrections of the two outer weights over 1/√n; mean and log of spread of the transformed W.
const OUTER = [0, 0.221157, -0.147981, -2.07119, 4.434685, -2.706056];
const NEXT = [0, 0.042981, -0.293762, -1.752461, 5.682633, -3.582633];
const SMALL_EDGE = [-2.273, 0.459];
const SMALL_MEAN = [0.544, -0.39978, 0.025054, -6.714e-4];
const SMALL_LOG_SPREAD = [1.3822, -0.77857, 0.062767, -0.0020322];
const LARGE_MEAN = [-1.5861, -0.31082, -0.083751, 0.0038915];
const LARGE_LOG_SPREAD = [-0.4803, -0.082676, 0.0030302];
const LARGEST_SMALL = 11;

/**
 * Shapiro and Wilk's test of normality.
 *
 * @param values 3 to 5000 of them, not all the same
 * @source P. Royston, Remark AS R94: a remark on algorithm AS 181, Appl. Statist. 44 (1995) 547
 */
export function shapiroWilk(values: readonly number[]): NormalityTest {
  const sorted = values.toSorted((a, b) => a - b);
  const count = sorted.length;
  const mean = sorted.reduce((sum, value) => sum + value, 0) / count;
  const weights = weightsOf(count);
  const product = weights.reduce((sum, weight, i) => sum + weight * (sorted[count - 1 - i]! - sorted[i]!), 0);
  const squares = sorted.reduce((sum, value) => sum + (value - mean) ** 2, 0);
  const weightSquares = 2 * weights.reduce((sum, weight) => sum + weight ** 2, 0);
  // 1 − W as a difference of squares, which loses no digits where W is next to 1.
  const whole = Math.sqrt(weightSquares * squares);
  const rest = ((whole - product) * (whole + product)) / (weightSquares * squares);
  return { statistic: 1 - rest, p: pOf(Math.max(rest, 0), count) };
}

/** Weights of the upper half, the outermost first; the lower half has the same with the other sign. */
function weightsOf(count: number): readonly number[] {
  const half = Math.floor(count / 2);
  if (count === 3) return [Math.SQRT1_2];
  const expected = Array.from({ length: half }, (_, i) => normal.quantileAbove((i + 0.625) / (count + 0.25)));
  const [first = 0, second = 0] = expected;
  const squares = 2 * expected.reduce((sum, m) => sum + m * m, 0);
  const perRoot = 1 / Math.sqrt(count);
  const outer = first / Math.sqrt(squares) + polynomial(OUTER, perRoot);
  const isLong = count > 5;
  const next = second / Math.sqrt(squares) + polynomial(NEXT, perRoot);
  const left = squares - 2 * first ** 2 - (isLong ? 2 * second ** 2 : 0);
  const right = 1 - 2 * outer ** 2 - (isLong ? 2 * next ** 2 : 0);
  const corrected = isLong ? [outer, next] : [outer];
  return expected.map((m, i) => corrected[i] ?? m / Math.sqrt(left / right));
}

function pOf(rest: number, count: number): number {
  if (count === 3) return Math.max((6 / Math.PI) * (Math.asin(Math.sqrt(1 - rest)) - Math.PI / 3), 0);
  const logRest = Math.log(rest);
  if (count > LARGEST_SMALL) {
    const size = Math.log(count);
    return shareAbove((logRest - polynomial(LARGE_MEAN, size)) / Math.exp(polynomial(LARGE_LOG_SPREAD, size)));
  }
  const edge = polynomial(SMALL_EDGE, count);
  if (logRest >= edge) return 0;
  const transformed = -Math.log(edge - logRest);
  return shareAbove((transformed - polynomial(SMALL_MEAN, count)) / Math.exp(polynomial(SMALL_LOG_SPREAD, count)));
}

const polynomial = (coefficients: readonly number[], x: number): number =>
  coefficients.reduceRight((sum, coefficient) => sum * x + coefficient, 0);
