import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { aWrench, uncalibrated } from './testing/a-wrench.ts';
import { expandedUncertaintyNm } from './uncertainty.ts';

fc.configureGlobal({ seed: 24 });

const withCalibration = (expandedUncertaintyPercent: number, resolutionNm: number) =>
  aWrench({ resolutionNm }, { expandedUncertaintyPercent });

const at = (torqueNm: number) => expandedUncertaintyNm(withCalibration(1.2, 0.5), torqueNm)!;

describe('expanded uncertainty of a torque', () => {
  it('is that of the calibration where the display resolves finely', () => {
    expect(expandedUncertaintyNm(withCalibration(1, 1e-9), 100)).toBeCloseTo(1, 9);
  });

  it('is that of the display alone where the calibration adds nothing: 2 x 1 / (2 sqrt 3)', () => {
    // JCGM 100:2008 (GUM), F.2.2.1: u = 0.29 of one step of an indication (read as 0.29; 1/sqrt 12)
    expect(expandedUncertaintyNm(withCalibration(0, 1), 100)! / 2).toBeCloseTo(0.29, 2);
  });

  it('adds the two in quadrature: U 1 % of 100 N·m, steps of 1 N·m', () => {
    expect(expandedUncertaintyNm(withCalibration(1, 1), 100)).toBeCloseTo(Math.sqrt(1 + 1 / 3), 12);
  });

  it('does not pretend to know that of a wrench never calibrated', () => {
    expect(expandedUncertaintyNm(uncalibrated(), 100)).toBeUndefined();
  });

  it('grows with the size of the torque, whichever way it turns', () => {
    const torque = fc.double({ min: 0, max: 2000, noNaN: true });
    fc.assert(
      fc.property(torque, torque, (a, b) => {
        expect(at(Math.max(a, b))).toBeGreaterThanOrEqual(at(Math.min(a, b)));
        expect(at(-a)).toBe(at(a));
      }),
    );
  });
});
