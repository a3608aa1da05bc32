import { invalid, type Result } from '../failure/failure.ts';
import { UNIT_SLIPS } from './unit-slips.ts';

/** One target with what was shown and what the reference showed. */
export interface ReadingsAt {
  readonly targetNm: number;
  readonly indicatedNm?: readonly number[] | undefined;
  readonly referenceNm: readonly number[];
}

type Refusal = Extract<Result<never>, { ok: false }>;

/**
 * What is wrong with the readings of one point, if anything: missing, zero, or in another unit.
 *
 * @param field of the point, such as `points[1]`
 */
export function readingsFlaw(point: ReadingsAt, field: string): Refusal | undefined {
  const { referenceNm, indicatedNm } = point;
  if (referenceNm.length < 2)
    return invalid(`${field}.referenceNm`, 'too few repeats to tell how they scatter', 'at least 2, as a rule 5');
  if (indicatedNm && indicatedNm.length !== referenceNm.length)
    return invalid(
      `${field}.indicatedNm`,
      `${indicatedNm.length} readings of the wrench stand against ${referenceNm.length} of the reference`,
      'one for each reading of the reference',
    );
  const zeroAt = referenceNm.findIndex((value) => !(value > 0));
  if (zeroAt >= 0)
    return invalid(
      `${field}.referenceNm[${zeroAt}]`,
      `a reference of ${referenceNm[zeroAt]} N·m`,
      'more than 0: the deviation is told by it',
    );
  const idleAt = indicatedNm?.findIndex((value) => !(value > 0)) ?? -1;
  if (idleAt >= 0)
    return invalid(`${field}.indicatedNm[${idleAt}]`, `the wrench showed ${indicatedNm?.[idleAt]} N·m`, 'more than 0');
  return unitFlaw(point, field);
}

/** Farther off than any wrench that still turns: the wrong unit, or readings of another target. */
const FARTHEST = 0.2;
/** A slip of unit is named where the factor fits within this. */
const CLOSE = 0.06;

function unitFlaw({ targetNm, indicatedNm, referenceNm }: ReadingsAt, field: string): Refusal | undefined {
  const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
  const shownNm = indicatedNm ? mean(indicatedNm) : targetNm;
  const ratio = shownNm / mean(referenceNm);
  if (Math.abs(ratio - 1) <= FARTHEST && Math.abs(shownNm / targetNm - 1) <= FARTHEST) return undefined;
  const column = Math.abs(shownNm / targetNm - 1) > FARTHEST ? 'indicatedNm' : 'referenceNm';
  const found = column === 'indicatedNm' ? shownNm / targetNm : 1 / ratio;
  const slip = nearestSlip(found);
  if (slip)
    return invalid(
      `${field}.${column}`,
      `it stands at ${found.toPrecision(4)} times the other column: a factor of ${slip.name}, as if it were in ${slip.unit}`,
      'both columns in N·m',
    );
  return invalid(
    `${field}.${column}`,
    `it stands at ${found.toPrecision(3)} times the other column; readings of another target, or out of order`,
    `within ${FARTHEST * 100} % of ${targetNm} N·m`,
  );
}

function nearestSlip(found: number): (typeof UNIT_SLIPS)[number] | undefined {
  const off = (factor: number) => Math.abs(found / factor - 1);
  const nearest = UNIT_SLIPS.toSorted((a, b) => off(a.factor) - off(b.factor))[0];
  return nearest && off(nearest.factor) < CLOSE ? nearest : undefined;
}
