import type { BeforeUseCheck, Wrench } from '@clampwright/core/wrench';
import { demoId } from '../identity.ts';
import { SECOND_TECHNICIAN, TECHNICIAN } from '../people.ts';
import { instantBefore } from './days.ts';

/** Deviations in percent, the oldest first, one a week; the middle wrench jumps after its fall. */
const SEEN: Readonly<Record<string, readonly number[]>> = {
  'KH-102': [0.7, 1, 0.8, 1.2, 0.9, 0.6, 1.1, 0.9, 1, 0.8, 1.2, 0.7, 0.9, 1.1, 0.8, 1, 5.2, 5.6],
  'KH-103': [-0.5, -0.2, -0.4, -0.3, -0.6, -0.3, -0.5, -0.2, -0.4, -0.3],
  'KH-101': [0.8, 1, 0.9, 0.7, 1.1, 0.9],
};
const WEEK_DAYS = 7;
/** Before the bench was used for the calibration of the middle wrench. */
const LAST_DAYS_AGO = 6;

export function demoChecks(now: Date, wrenches: readonly Wrench[]): readonly BeforeUseCheck[] {
  return wrenches.flatMap((wrench) => {
    const seen = SEEN[wrench.serial] ?? [];
    const indicatedNm = wrench.highestNm * 0.6;
    return seen.map((deviation, index) => ({
      id: demoId(`check ${wrench.serial} ${index}`),
      wrenchId: wrench.id,
      at: instantBefore(now, LAST_DAYS_AGO + (seen.length - 1 - index) * WEEK_DAYS, '06:40'),
      by: (index % 3 === 0 ? SECOND_TECHNICIAN : TECHNICIAN).name,
      checker: 'Wall checker KH-K1',
      direction: 'clockwise' as const,
      indicatedNm,
      referenceNm: Number((indicatedNm / (1 + deviation / 100)).toFixed(2)),
    }));
  });
}
