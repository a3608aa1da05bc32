import { invalid, type Result } from '../../failure/failure.ts';
import { asCompliance, inverseOf, matrixOf, type SquareMatrix } from './square-matrix.ts';

/** Coefficients may miss their symmetry by so much: two decimals round each by half a hundredth. */
const CONTRADICTION = 0.012;
const DIAGONAL_TOLERANCE = 1e-6;
const SWEEPS = 60;

/**
 * Compliance, up to its scale, from the coefficients of a joint with all bolts tight.
 *
 * Column j is the change of every bolt's force for a unit put on j: b_ij = K_ij / K_jj with K the inverse of the
 * compliance. K is symmetric, so b_ij·K_jj = b_ji·K_ii gives the ratios of its diagonal.
 *
 * @returns refused with the coefficient that contradicts another one
 * @source Bibel and Ezell, J. Pressure Vessel Technol. 114 (1992) 439 (from memory); symmetry: Maxwell–Betti
 */
export function complianceFromInteraction(interaction: SquareMatrix, field: string): Result<SquareMatrix> {
  const odd = firstOdd(interaction, field);
  if (odd) return odd;
  const { size, values } = interaction;
  const own = diagonalOf(interaction);
  const contradiction = worstContradiction(interaction, own, field);
  if (contradiction) return contradiction;
  const stiffness = matrixOf(size, (i, j) => (values[i * size + j]! * own[j]! + values[j * size + i]! * own[i]!) / 2);
  const compliance = inverseOf(stiffness);
  if (!compliance) {
    const message = 'No joint behaves so: the matrix is not positive definite once its symmetry is put in.';
    return invalid(field, message, 'the coefficients of a joint with all bolts tight, diagonal 1');
  }
  return asCompliance(compliance, field);
}

function firstOdd({ size, values }: SquareMatrix, field: string) {
  for (let i = 0; i < size; i++) {
    const own = values[i * size + i]!;
    if (Math.abs(own - 1) > DIAGONAL_TOLERANCE) {
      return invalid(`${field}[${i}][${i}]`, `${own} stands where a bolt answers to itself.`, '1 on the diagonal');
    }
    for (let j = 0; j < i; j++) {
      const [here, there] = [values[i * size + j]!, values[j * size + i]!];
      const isOdd = here * there < 0 || (here === 0) !== (there === 0);
      if (isOdd && Math.max(Math.abs(here), Math.abs(there)) > CONTRADICTION)
        return contradicts(field, i, j, values, size);
    }
  }
  return undefined;
}

function contradicts(field: string, i: number, j: number, values: Float64Array, size: number) {
  const [here, there] = [values[i * size + j]!, values[j * size + i]!];
  const message = `Bolt ${i + 1} for ${j + 1} is ${here}, bolt ${j + 1} for ${i + 1} is ${there}: with the others this contradicts the symmetry of an elastic joint.`;
  return invalid(`${field}[${i}][${j}]`, message, 'coefficients that one symmetric stiffness can give');
}

/**
 * Diagonal of the stiffness up to a factor: along the strongest links first, then evened out by least squares in
 * logarithms, so that the error of one measured pair is shared by all. Parts without a link keep a scale of their own.
 */
function diagonalOf(interaction: SquareMatrix): Float64Array {
  const { size, values } = interaction;
  const link = (i: number, j: number) => Math.max(0, values[i * size + j]! * values[j * size + i]!);
  const step = (i: number, j: number) => Math.log(Math.abs(values[i * size + j]! / values[j * size + i]!));
  const logs = alongStrongest(size, link, step);
  for (let sweep = 0; sweep < SWEEPS; sweep++) {
    for (let i = 0; i < size; i++) {
      let weight = 0;
      let sum = 0;
      for (let j = 0; j < size; j++) {
        const one = i === j ? 0 : link(i, j);
        if (one === 0) continue;
        weight += one;
        sum += one * (logs[j]! + step(i, j));
      }
      if (weight > 0) logs[i] = sum / weight;
    }
  }
  return logs.map(Math.exp);
}

type OfPair = (i: number, j: number) => number;

/** Prim's spanning tree over the strongest links. */
function alongStrongest(size: number, link: OfPair, step: OfPair): Float64Array {
  const logs = new Float64Array(size);
  const strength = new Float64Array(size);
  const from = new Int32Array(size).fill(-1);
  const open = new Set(Array.from({ length: size }, (_, index) => index));
  while (open.size > 0) {
    let next = -1;
    for (const index of open) if (next < 0 || strength[index]! > strength[next]!) next = index;
    open.delete(next);
    logs[next] = from[next]! < 0 ? 0 : logs[from[next]!]! + step(next, from[next]!);
    for (const index of open) {
      const found = link(index, next);
      if (found > strength[index]!) [strength[index], from[index]] = [found, next];
    }
  }
  return logs;
}

/** The pair that lies farthest off, if it lies too far. */
function worstContradiction({ size, values }: SquareMatrix, own: Float64Array, field: string) {
  let most = CONTRADICTION;
  let worst: readonly [number, number] | undefined;
  for (let i = 0; i < size; i++) {
    for (let j = 0; j < i; j++) {
      const gap = values[i * size + j]! * own[j]! - values[j * size + i]! * own[i]!;
      const share = Math.abs(gap) / Math.sqrt(own[i]! * own[j]!);
      if (share > most) [most, worst] = [share, [i, j]];
    }
  }
  return worst && contradicts(field, ...worst, values, size);
}

/** Coefficients with all bolts tight: column j is the change of every bolt for a unit put on j. */
export function interactionOf(compliance: SquareMatrix): SquareMatrix {
  const stiffness = inverseOf(compliance);
  if (!stiffness) throw new Error('a compliance that is not positive definite');
  const { size, values } = stiffness;
  return matrixOf(size, (i, j) => values[i * size + j]! / values[j * size + j]!);
}
