import { invalid, ok, type Result } from '../../failure/failure.ts';
import { type Remark, remark } from '../../language/mechanics/remark.ts';
import type { GivingWay } from './simulate.ts';
import { asCompliance, matrixOf, type SquareMatrix } from './square-matrix.ts';

/** A compliance worked out, and what was taken for granted. */
export interface Modelled extends GivingWay {
  readonly assumptions: readonly Remark[];
}

export const LINEAR = remark('linear');
export const PRESSED = remark('pressed-first');

const withBolts = (closing: SquareMatrix, boltNPerMm: number): SquareMatrix =>
  matrixOf(closing.size, (i, j) => closing.values[i * closing.size + j]! + (i === j ? 1 / boltNPerMm : 0));

/**
 * A joint on its gasket or bed as it is pressed first and, where that is told, as it is once pressed.
 *
 * @param closing what the parts close for a unit of force on each bolt, for a stiffness of what lies between them
 */
export function pressedTwice(
  bed: number,
  bedUnloading: number | undefined,
  boltNPerMm: number,
  closing: (bed: number) => Result<SquareMatrix>,
): Result<GivingWay> {
  const first = reckonable(closing(bed), boltNPerMm);
  if (!first.ok || bedUnloading === undefined) return first.ok ? ok({ first: first.value }) : first;
  const later = reckonable(closing(bedUnloading), boltNPerMm);
  return later.ok ? ok({ first: first.value, later: later.value }) : later;
}

function reckonable(closing: Result<SquareMatrix>, boltNPerMm: number): Result<SquareMatrix> {
  if (!closing.ok) return closing;
  const read = asCompliance(withBolts(closing.value, boltNPerMm), 'model');
  return read.ok ? read : beyondReckoning();
}

/** Refuses a model of which rounding leaves no answer. */
export const beyondReckoning = () =>
  invalid(
    'model',
    'These dimensions and stiffnesses lie too far apart to be reckoned with.',
    'dimensions and stiffnesses of a real joint',
  );

/** Where a part bends over less than so many of its thicknesses, the shear that thin parts leave out is felt. */
const LEAST_THICKNESSES = 1.3;

/** Said of a bed so firm that a thin part is no longer a good likeness; the characteristic length tells. */
export const firmBed = (lengthMm: number, heightMm: number): readonly Remark[] =>
  lengthMm < LEAST_THICKNESSES * heightMm ? [remark('firm-bed')] : [];

/** The larger of the first stiffness and that of unloading, where it is told; refused when it is the softer one. */
export function unloadingFault(first: number, unloading: number | undefined) {
  if (unloading === undefined || unloading >= first) return undefined;
  const message = 'A bed is at least as stiff when it is let go as when it is pressed first.';
  return invalid('model.bedUnloadingNPerMm3', message, `at least ${first} N/mm³`);
}
