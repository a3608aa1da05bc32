import { describe, expect, it } from 'vitest';
import { shownSlope } from './shown-slope.ts';

// JCGM 100:2008, 7.2.6: the estimate is rounded to be consistent with its uncertainty.
describe('the slope of a curve', () => {
  it.each([
    [3.4012, 0.0033, '3.401\u00a0±\u00a00.007\u00a0N·m/°'],
    [3.4, 0.0033, '3.400\u00a0±\u00a00.007\u00a0N·m/°'],
    [12.37, 0.21, '12.4\u00a0±\u00a00.4\u00a0N·m/°'],
    [240.4, 3.1, '240\u00a0±\u00a06\u00a0N·m/°'],
  ])('%d with standard error %d is told to the digit that it leaves', (slope, error, told) => {
    expect(shownSlope(slope, error, 'N·m', 'en')).toBe(told);
  });

  it('claims no uncertainty that is not known', () => {
    expect(shownSlope(3.4012, undefined, 'N·m', 'de')).toBe('3,40\u00a0N·m/°');
  });
});
