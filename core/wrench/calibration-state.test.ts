import { describe, expect, it } from 'vitest';
import { calibrationState, daysToCalibration } from './calibration-state.ts';
import { aWrench, uncalibrated } from './testing/a-wrench.ts';

describe('calibration on a day', () => {
  it.each([
    ['2026-01-15', 'valid'],
    ['2026-05-30', 'valid'],
    ['2026-05-31', 'soon'],
    ['2026-06-30', 'soon'],
    ['2026-07-01', 'overdue'],
  ])('due on 2026-06-30 is on %s %s', (onDate, state) => {
    expect(calibrationState(aWrench(), onDate)).toBe(state);
  });

  it('takes an instant for its day', () => {
    expect(calibrationState(aWrench(), '2026-06-30T23:59:59.999Z')).toBe('soon');
  });

  it('is never where there was none', () => {
    expect(calibrationState(uncalibrated(), '2026-01-15')).toBe('never');
    expect(daysToCalibration(uncalibrated(), '2026-01-15')).toBeUndefined();
  });

  it('counts whole days, also over the end of February', () => {
    expect(daysToCalibration(aWrench({}, { dueOn: '2028-03-01' }), '2028-02-28')).toBe(2);
    expect(daysToCalibration(aWrench({}, { dueOn: '2027-03-01' }), '2027-02-28')).toBe(1);
  });
});
