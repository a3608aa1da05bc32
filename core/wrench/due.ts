import { type CalibrationState, calibrationState, dueState } from './calibration-state.ts';
import type { ReferenceStandard } from './reference-standard.ts';
import type { Wrench } from './wrench.ts';

/** Pulls after which a wrench wants to be calibrated, whatever the calendar says (ISO 6789-1:2017: 5,000; from memory). */
export const PULLS_BETWEEN = 5000;
/** So many pulls before, it is due soon. */
const SOON_PULLS = 500;

/** Where a wrench stands by the calendar and by its pulls, whichever comes first. */
export function careState(wrench: Wrench, onDate: string, pullsSince: number): CalibrationState {
  const byCalendar = calibrationState(wrench, onDate);
  if (byCalendar !== 'valid' && byCalendar !== 'soon') return byCalendar;
  if (pullsSince >= PULLS_BETWEEN) return 'overdue';
  return pullsSince >= PULLS_BETWEEN - SOON_PULLS ? 'soon' : byCalendar;
}

/** Where the certificate of a reference stands on a day. */
export const referenceState = ({ dueOn }: ReferenceStandard, onDate: string): 'valid' | 'soon' | 'overdue' =>
  dueState(dueOn, onDate);
