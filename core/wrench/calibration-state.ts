import type { Wrench } from './wrench.ts';

export type CalibrationState = 'never' | 'off' | 'valid' | 'soon' | 'overdue';

/** Time enough to send a wrench away and have it back (common practice). */
const SOON_DAYS = 30;

/**
 * Where a wrench stands in its calibration on a day. It is valid to the end of the day it is due.
 *
 * @param onDate ISO 8601, a day or an instant
 */
export function calibrationState(wrench: Wrench, onDate: string): CalibrationState {
  const daysLeft = daysToCalibration(wrench, onDate);
  if (daysLeft === undefined) return 'never';
  if (wrench.calibration?.conforms === false) return 'off';
  return stateAfter(daysLeft);
}

/** A day on which something is due, seen from another; valid to its end. */
export const dueState = (dueOn: string, onDate: string): 'valid' | 'soon' | 'overdue' =>
  stateAfter(dayNumber(dueOn) - dayNumber(onDate));

function stateAfter(daysLeft: number): 'valid' | 'soon' | 'overdue' {
  if (daysLeft < 0) return 'overdue';
  return daysLeft <= SOON_DAYS ? 'soon' : 'valid';
}

/** Days until the calibration is due, below 0 when it is overdue; undefined when there never was one. */
export function daysToCalibration({ calibration }: Wrench, onDate: string): number | undefined {
  return calibration && dayNumber(calibration.dueOn) - dayNumber(onDate);
}

const dayNumber = (date: string): number => Date.parse(date.slice(0, 10)) / 86_400_000;
