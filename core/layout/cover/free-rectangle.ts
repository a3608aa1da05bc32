import { type PlateOnBed, plateFigures } from '../interaction/plate-on-bed.ts';
import { choleskyOf, matrixOf, type SquareMatrix } from '../interaction/square-matrix.ts';
import type { Pair } from './cover-shape.ts';
import { gaussRule, jacobi, type Shape } from './polynomials.ts';

/** A cover with four free edges on a bed that is a frame, or the whole of what lies within its outer sides. */
export interface RectangleOnBed extends PlateOnBed {
  /** Half sides of the cover, mm. */
  readonly half: Pair;
  /** Half sides of the bed, mm. */
  readonly bedOuter: Pair;
  /** Half sides of what the bed leaves free in the middle, mm. */
  readonly bedInner?: Pair | undefined;
}

/** A place counted from the middle of the cover. */
interface Spot {
  readonly xMm: number;
  readonly yMm: number;
}

/**
 * How far the cover goes down at each place for a unit of force at each, mm/N.
 *
 * @returns undefined where rounding leaves no answer
 * @source Rayleigh and Ritz with Legendre polynomials, derivation ours; energy of a thin plate: Timoshenko and
 *         Woinowsky-Krieger, Theory of Plates and Shells (from memory); bed after Winkler. Held to solid elements.
 */
export function rectangleClosing(plate: RectangleOnBed, spots: readonly Spot[]): SquareMatrix | undefined {
  const [x, y] = [axisOf(plate, 0), axisOf(plate, 1)];
  const size = spots.length;
  const sum = new Float64Array(size * size);
  // the bed lies even about both axes, so what is even along one of them has no part in what is odd
  for (const [oddX, oddY] of PARITIES) {
    const terms = everyOther(x.count, oddX).flatMap((m) => everyOther(y.count, oddY).map((n) => [m, n] as const));
    const lower = choleskyOf(stiffness(plate, x, y, terms));
    if (!lower) return undefined;
    const solved = spots.map(({ xMm, yMm }) => {
      const [alongX, alongY] = [shapesAt(x, xMm), shapesAt(y, yMm)];
      return forward(
        lower,
        terms.map(([m, n]) => alongX[m]!.value * alongY[n]!.value),
      );
    });
    for (let i = 0; i < size; i++) {
      for (let j = 0; j <= i; j++) sum[i * size + j]! += dot(solved[i]!, solved[j]!);
    }
  }
  return matrixOf(size, (i, j) => sum[Math.max(i, j) * size + Math.min(i, j)]!);
}

const PARITIES = [
  [0, 0],
  [0, 1],
  [1, 0],
  [1, 1],
] as const;

const everyOther = (count: number, first: number): readonly number[] =>
  Array.from({ length: Math.ceil((count - first) / 2) }, (_, index) => first + 2 * index);

/** Products of the polynomials along one side, integrated over it. */
interface Axis {
  readonly halfMm: number;
  readonly count: number;
  readonly mass: Float64Array;
  readonly slopes: Float64Array;
  readonly bends: Float64Array;
  /** Bend of the row times value of the column. */
  readonly bendByValue: Float64Array;
  readonly bedOuter: Float64Array;
  /** Nothing where the bed reaches to the middle. */
  readonly bedInner: Float64Array;
}

/** Terms along a side: with twice as many no bolt of a cover of 32 characteristic lengths changes by more than 3 %. */
const LEAST_TERMS = 14;
const MOST_TERMS = 40;
const TERMS_PER_LENGTH = 3;

function axisOf(plate: RectangleOnBed, axis: 0 | 1): Axis {
  const halfMm = plate.half[axis];
  const wanted = Math.ceil(LEAST_TERMS + (TERMS_PER_LENGTH * halfMm) / plateFigures(plate).lengthMm);
  const count = Math.min(MOST_TERMS, wanted);
  const over = (reach: number, of: (row: Shape, column: Shape) => number) => integrals(count, reach, of);
  const values = (row: Shape, column: Shape) => row.value * column.value;
  const innerMm = plate.bedInner?.[axis] ?? 0;
  return {
    halfMm,
    count,
    mass: over(1, values),
    slopes: over(1, (row, column) => row.first * column.first),
    bends: over(1, (row, column) => row.second * column.second),
    bendByValue: over(1, (row, column) => row.second * column.value),
    bedOuter: over(plate.bedOuter[axis] / halfMm, values),
    bedInner: over(innerMm / halfMm, values),
  };
}

/** Integrals of a product of each two polynomials from -reach to reach, in which the half side is 1. */
function integrals(count: number, reach: number, of: (row: Shape, column: Shape) => number): Float64Array {
  const nodes = gaussRule(count).map(({ x, weight }) => ({ weight: weight * reach, shapes: shapes(count, x * reach) }));
  return matrixOf(count, (i, j) =>
    nodes.reduce((sum, node) => sum + node.weight * of(node.shapes[i]!, node.shapes[j]!), 0),
  ).values;
}

/** Legendre polynomials, each so large that its square integrates to 1. */
const shapes = (count: number, x: number): readonly Shape[] =>
  jacobi(0, 0, count, x).map(({ value, first, second }, n) => {
    const size = Math.sqrt(n + 0.5);
    return { value: size * value, first: size * first, second: size * second };
  });

const shapesAt = ({ count, halfMm }: Axis, atMm: number): readonly Shape[] => shapes(count, atMm / halfMm);

/** Second derivative of the energy by the amounts of each two terms; the lower half alone, which is all that is read. */
function stiffness(plate: RectangleOnBed, x: Axis, y: Axis, terms: readonly (readonly [number, number])[]) {
  const { poisson, bedNPerMm3 } = plate;
  const { stiffnessNmm } = plateFigures(plate);
  const [a, b] = [x.halfMm, y.halfMm];
  const [alongX, alongY, across] = [(stiffnessNmm * b) / a ** 3, (stiffnessNmm * a) / b ** 3, stiffnessNmm / (a * b)];
  const bed = bedNPerMm3 * a * b;
  const size = terms.length;
  const values = new Float64Array(size * size);
  for (let row = 0; row < size; row++) {
    const [m, n] = terms[row]!;
    for (let column = 0; column <= row; column++) {
      const [p, q] = terms[column]!;
      const [inX, inY] = [m * x.count + p, n * y.count + q];
      const [backX, backY] = [p * x.count + m, q * y.count + n];
      const both = x.bendByValue[inX]! * y.bendByValue[backY]! + x.bendByValue[backX]! * y.bendByValue[inY]!;
      const twist = 2 * (1 - poisson) * x.slopes[inX]! * y.slopes[inY]!;
      values[row * size + column] =
        alongX * x.bends[inX]! * y.mass[inY]! +
        alongY * x.mass[inX]! * y.bends[inY]! +
        across * (poisson * both + twist) +
        bed * (x.bedOuter[inX]! * y.bedOuter[inY]! - x.bedInner[inX]! * y.bedInner[inY]!);
    }
  }
  return { size, values };
}

/** y of L·y = b. */
function forward(lower: Float64Array, right: readonly number[]): Float64Array {
  const size = right.length;
  const solved = Float64Array.from(right);
  for (let i = 0; i < size; i++) {
    for (let k = 0; k < i; k++) solved[i]! -= lower[i * size + k]! * solved[k]!;
    solved[i]! /= lower[i * size + i]!;
  }
  return solved;
}

function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += a[i]! * b[i]!;
  return sum;
}
