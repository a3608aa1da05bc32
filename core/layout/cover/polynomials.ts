/** A polynomial and its first two derivatives at one place. */
export interface Shape {
  readonly value: number;
  readonly first: number;
  readonly second: number;
}

/** Values of Jacobi polynomials, degrees 0 to count - 1. */
function jacobiValues(alpha: number, beta: number, count: number, x: number): Float64Array {
  const values = new Float64Array(Math.max(count, 2));
  values[0] = 1;
  values[1] = (alpha - beta + (alpha + beta + 2) * x) / 2;
  for (let n = 2; n < count; n++) {
    const sum = 2 * n + alpha + beta;
    const own = (sum - 1) * (sum * (sum - 2) * x + alpha * alpha - beta * beta);
    const before = 2 * (n + alpha - 1) * (n + beta - 1) * sum;
    values[n] = (own * values[n - 1]! - before * values[n - 2]!) / (2 * n * (n + alpha + beta) * (sum - 2));
  }
  return values;
}

/**
 * Jacobi polynomials with their derivatives, degrees 0 to count - 1; those of Legendre where both parameters are 0.
 *
 * @param x between -1 and 1
 * @source recurrence and derivative: Abramowitz and Stegun, 22.7.1 and 22.8 (from memory; held by the tests)
 */
export function jacobi(alpha: number, beta: number, count: number, x: number): readonly Shape[] {
  const value = jacobiValues(alpha, beta, count, x);
  const first = jacobiValues(alpha + 1, beta + 1, count, x);
  const second = jacobiValues(alpha + 2, beta + 2, count, x);
  return Array.from({ length: count }, (_, n) => {
    const slope = (n + alpha + beta + 1) / 2;
    return {
      value: value[n]!,
      first: n < 1 ? 0 : slope * first[n - 1]!,
      second: n < 2 ? 0 : slope * ((n + alpha + beta + 2) / 2) * second[n - 2]!,
    };
  });
}

/** Place and weight of one point of a rule of integration. */
export interface Node {
  readonly x: number;
  readonly weight: number;
}

/**
 * Rule of Gauss and Legendre over -1 to 1: exact for polynomials up to degree 2·count - 1.
 *
 * @source weights 2/((1 − x²)·P′²): Abramowitz and Stegun, 25.4.29 (from memory; held by the tests)
 */
export function gaussRule(count: number): readonly Node[] {
  return Array.from({ length: count }, (_, index) => {
    let x = Math.cos((Math.PI * (index + 0.75)) / (count + 0.5));
    for (let step = 0; step < NEWTON_STEPS; step++) {
      const { value, first } = jacobi(0, 0, count + 1, x)[count]!;
      x -= value / first;
    }
    const { first } = jacobi(0, 0, count + 1, x)[count]!;
    return { x, weight: 2 / ((1 - x * x) * first * first) };
  });
}

/** From the first guess, which is right to the third digit or better, this is down to rounding. */
const NEWTON_STEPS = 5;
