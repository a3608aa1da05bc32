import { invalid, ok, type Result } from '../../failure/failure.ts';

/** A square matrix, row by row. */
export interface SquareMatrix {
  readonly size: number;
  readonly values: Float64Array;
}

/** Halves of a symmetric matrix may differ by so much of the diagonals: rounding, but no mistake. */
const SYMMETRY_TOLERANCE = 1e-6;

/** @returns refused with the row that is too short or too long */
export function squareMatrix(rows: readonly (readonly number[])[], field: string): Result<SquareMatrix> {
  const size = rows.length;
  const odd = rows.findIndex((row) => row.length !== size);
  if (odd >= 0) {
    const message = `The matrix is not square: it has ${size} rows, and this row has ${rows[odd]!.length} figures.`;
    return invalid(`${field}[${odd}]`, message, `${size} figures, as many as there are rows`);
  }
  return ok({ size, values: Float64Array.from(rows.flat()) });
}

export const rowsOf = ({ size, values }: SquareMatrix): number[][] =>
  Array.from({ length: size }, (_, i) => Array.from(values.subarray(i * size, (i + 1) * size)));

/** A matrix from its entries by row and column, both from 0. */
export function matrixOf(size: number, entry: (row: number, column: number) => number): SquareMatrix {
  const values = new Float64Array(size * size);
  for (let i = 0; i < size; i++) {
    for (let j = 0; j < size; j++) values[i * size + j] = entry(i, j);
  }
  return { size, values };
}

/** Beside the others a bolt may be held this many times more stiffly than alone. Real joints stay below ten thousand. */
const MOST_STIFFENED = 1e5;

/**
 * Holds a matrix to be a compliance: symmetric, positive definite, and so far from singular that figures can carry it.
 * A joint under work borders an inverse bolt by bolt; of thirty thousand matrices near to singular that lost its way
 * only where one bolt was stiffened by the others more than ten million times; a plan stays even to a ten-thousandth
 * up to the bound.
 *
 * @returns the matrix with both halves made equal; refused with the entry or the matrix that is not so
 */
export function asCompliance(matrix: SquareMatrix, field: string): Result<SquareMatrix> {
  const fault = halvesFault(matrix, field);
  if (fault) return fault;
  const { size, values } = matrix;
  const even = matrixOf(size, (i, j) => (values[i * size + j]! + values[j * size + i]!) / 2);
  const stiffness = inverseOf(even);
  if (!stiffness) {
    const message = 'The matrix is not positive definite: some forces would do no work while the nuts travel.';
    return invalid(field, message, POSITIVE_DEFINITE);
  }
  for (let i = 0; i < size; i++) {
    if (even.values[i * size + i]! * stiffness.values[i * size + i]! <= MOST_STIFFENED) continue;
    const message = `The matrix is hardly positive definite: with the others tight, bolt ${i + 1} gives way more than a hundred thousand times less than alone.`;
    return invalid(field, message, POSITIVE_DEFINITE);
  }
  return ok(even);
}

const POSITIVE_DEFINITE = 'a symmetric, positive definite matrix with the bolts’ own compliance in it';

function halvesFault({ size, values }: SquareMatrix, field: string) {
  for (let i = 0; i < size; i++) {
    const own = values[i * size + i]!;
    if (own <= 0) return invalid(`${field}[${i}][${i}]`, 'A bolt gives way to its own force.', 'more than 0');
    for (let j = 0; j < i; j++) {
      const [here, there] = [values[i * size + j]!, values[j * size + i]!];
      const allowed = SYMMETRY_TOLERANCE * Math.sqrt(own * values[j * size + j]!);
      if (Math.abs(here - there) > allowed) {
        const message = `The matrix is not symmetric: row ${i + 1}, column ${j + 1} has ${here}, row ${j + 1}, column ${i + 1} has ${there}.`;
        return invalid(`${field}[${i}][${j}]`, message, 'the same figure on both sides of the diagonal');
      }
    }
  }
  return undefined;
}

/** Pivots below so much of the diagonal are rounding. */
const SMALLEST_PIVOT = 1e-13;

/**
 * Lower triangle L of M = L·Lᵀ, row by row; only the lower half of M is read.
 *
 * @returns undefined for a matrix that is not positive definite
 */
export function choleskyOf({ size, values }: SquareMatrix): Float64Array | undefined {
  const lower = new Float64Array(size * size);
  for (let i = 0; i < size; i++) {
    const row = i * size;
    for (let j = 0; j <= i; j++) {
      const other = j * size;
      let sum = values[row + j]!;
      for (let k = 0; k < j; k++) sum -= lower[row + k]! * lower[other + k]!;
      if (i > j) lower[row + j] = sum / lower[other + j]!;
      else if (sum > SMALLEST_PIVOT * values[row + i]!) lower[row + i] = Math.sqrt(sum);
      else return undefined;
    }
  }
  return lower;
}

/** x of L·Lᵀ·x = b, with L from `choleskyOf`. */
export function solveCholesky(lower: Float64Array, right: ArrayLike<number>): Float64Array {
  const size = right.length;
  const x = Float64Array.from(right);
  for (let i = 0; i < size; i++) {
    for (let k = 0; k < i; k++) x[i]! -= lower[i * size + k]! * x[k]!;
    x[i]! /= lower[i * size + i]!;
  }
  for (let i = size - 1; i >= 0; i--) {
    x[i]! /= lower[i * size + i]!;
    for (let k = 0; k < i; k++) x[k]! -= lower[i * size + k]! * x[i]!;
  }
  return x;
}

/** Inverse of a symmetric, positive definite matrix; undefined for any other. */
export function inverseOf(matrix: SquareMatrix): SquareMatrix | undefined {
  const lower = choleskyOf(matrix);
  if (!lower) return undefined;
  const { size } = matrix;
  const unit = new Float64Array(size);
  const columns = Array.from({ length: size }, (_, j) => {
    unit.fill(0);
    unit[j] = 1;
    return solveCholesky(lower, unit);
  });
  return matrixOf(size, (i, j) => (columns[j]![i]! + columns[i]![j]!) / 2);
}

export function timesVector({ size, values }: SquareMatrix, vector: ArrayLike<number>): Float64Array {
  const product = new Float64Array(size);
  for (let i = 0; i < size; i++) {
    let sum = 0;
    for (let j = 0; j < size; j++) sum += values[i * size + j]! * vector[j]!;
    product[i] = sum;
  }
  return product;
}
