import { type CalibrationState, calibrationState, dueState } from './calibration-state.ts';
import type { ReferenceStandard } from './reference-standard.ts';
import type { Wrench } from './wrench.ts';

/** Pulls after which a wrench wants to be calibrated, whatever the calendar says (ISO 6789-1:2017: 5,000; from memory). */
const USUAL_PULLS = 5000;
/** It is due soon once no more than this share of its pulls is left (common practice). */
const SOON_SHARE = 0.1;

/** Pulls between two calibrations of a wrench: as was chosen when it was calibrated last, or as usual. */
export const pullsBetween = ({ calibration }: Pick<Wrench, 'calibration'>): number =>
  calibration?.dueAfterPulls ?? USUAL_PULLS;

/** Where a wrench stands by the calendar and by its pulls, whichever comes first. */
export function careState(wrench: Wrench, onDate: string, pullsSince: number): CalibrationState {
  const byCalendar = calibrationState(wrench, onDate);
  if (byCalendar !== 'valid' && byCalendar !== 'soon') return byCalendar;
  const most = pullsBetween(wrench);
  if (pullsSince >= most) return 'overdue';
  return pullsSince >= most * (1 - SOON_SHARE) ? 'soon' : byCalendar;
}

/** Where the certificate of a reference stands on a day. */
export const referenceState = ({ dueOn }: ReferenceStandard, onDate: string): 'valid' | 'soon' | 'overdue' =>
  dueState(dueOn, onDate);
