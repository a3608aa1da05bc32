import { z } from 'zod';
import { invalid, ok, type Result } from '../failure/failure.ts';

/** What wrenches are compared with: a torque transducer or checker with a certificate of its own. */
export const referenceStandardSchema = z.strictObject({
  id: z.uuid(),
  name: z.string().trim().min(1).max(100),
  serial: z.string().trim().min(1).max(100),
  lowestNm: z.number().min(0),
  highestNm: z.number().positive(),
  certificate: z.string().trim().min(1).max(100),
  /** Laboratory that calibrated it. */
  by: z.string().trim().min(1).max(200),
  calibratedOn: z.iso.date(),
  dueOn: z.iso.date(),
  /** Expanded relative uncertainty, k = 2, percent. */
  expandedUncertaintyPercent: z.number().min(0).max(100),
  /** Known error that is not corrected, percent of the reading. */
  biasPercent: z.number().min(-100).max(100).optional(),
  place: z.string().trim().min(1).max(200).optional(),
});
export type ReferenceStandard = z.infer<typeof referenceStandardSchema>;

/**
 * Whether a reference may be compared with on a day and up to a torque.
 *
 * @param onDate ISO 8601 day
 * @returns refused with field `reference.dueOn`, `reference.calibratedOn` or `reference.highestNm`
 */
export function usableReference(
  { name, calibratedOn, dueOn, lowestNm, highestNm }: ReferenceStandard,
  onDate: string,
  torquesNm: readonly number[],
): Result<undefined> {
  const day = onDate.slice(0, 10);
  if (day > dueOn) {
    return invalid('reference.dueOn', `the calibration of ${name} was due on ${dueOn}`, 'a reference in calibration');
  }
  if (day < calibratedOn) {
    return invalid(
      'reference.calibratedOn',
      `${name} was calibrated on ${calibratedOn}, after ${day}`,
      'a reference calibrated before it is used',
    );
  }
  const beyondNm = torquesNm.find((torqueNm) => torqueNm > highestNm || torqueNm < lowestNm);
  if (beyondNm === undefined) return ok(undefined);
  const field = beyondNm > highestNm ? 'reference.highestNm' : 'reference.lowestNm';
  return invalid(field, `${name} does not reach ${beyondNm} N·m`, `a torque from ${lowestNm} to ${highestNm} N·m`);
}
