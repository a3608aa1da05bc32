import { describe, expect, it } from 'vitest';
import { careState, pullsBetween } from './due.ts';
import { aWrench, uncalibrated } from './testing/a-wrench.ts';

const DAY = '2026-01-15';

describe('when a wrench is due by its pulls', () => {
  it.each([
    [undefined, 4499, 'valid'],
    [undefined, 4500, 'soon'],
    [undefined, 5000, 'overdue'],
    [800, 719, 'valid'],
    [800, 720, 'soon'],
    [800, 800, 'overdue'],
    [12_000, 5000, 'valid'],
    [12_000, 10_800, 'soon'],
  ] as const)('chosen after %s pulls it is at %s %s', (dueAfterPulls, pullsSince, state) => {
    expect(careState(aWrench({}, dueAfterPulls === undefined ? {} : { dueAfterPulls }), DAY, pullsSince)).toBe(state);
  });

  it('is overdue by the day that was chosen though pulls are left', () => {
    expect(careState(aWrench({}, { dueAfterPulls: 12_000 }), '2026-07-01', 3)).toBe('overdue');
  });

  it('is the usual 5,000 where nothing was chosen or nothing was calibrated', () => {
    expect(pullsBetween(aWrench())).toBe(5000);
    expect(pullsBetween(uncalibrated())).toBe(5000);
    expect(careState(uncalibrated(), DAY, 9000)).toBe('never');
  });
});
