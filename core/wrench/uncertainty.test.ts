import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { aWrench, uncalibrated } from './testing/a-wrench.ts';
import { expandedUncertaintyNm, uncertaintyAtFastenerNm } from './uncertainty.ts';

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

describe('a calibration whose points are known', () => {
  const points = [
    { torqueNm: 40, deviationPercent: -1, expandedUncertaintyPercent: 2 },
    { torqueNm: 200, deviationPercent: 0.5, expandedUncertaintyPercent: 0.5 },
  ];
  const wrench = aWrench({ resolutionNm: 1e-9 }, { points });

  it('counts the deviation that nobody corrects for, and lies between its points', () => {
    expect(expandedUncertaintyNm(wrench, 40)).toBeCloseTo(1.2, 9);
    expect(expandedUncertaintyNm(wrench, 200)).toBeCloseTo(2, 9);
    expect(expandedUncertaintyNm(wrench, 120)).toBeCloseTo(120 * 0.02, 9);
  });

  it('is not made surer by a torque below the lowest point', () => {
    expect(expandedUncertaintyNm(wrench, 20)).toBeCloseTo(1.2, 9);
  });

  it('takes the worse of two directions', () => {
    const worse = {
      torqueNm: 40,
      direction: 'anticlockwise',
      deviationPercent: 2,
      expandedUncertaintyPercent: 2,
    } as const;
    expect(expandedUncertaintyNm(aWrench({ resolutionNm: 1e-9 }, { points: [...points, worse] }), 40)).toBeCloseTo(
      1.6,
      9,
    );
  });
});

describe('the uncertainty at the fastener', () => {
  const wrench = aWrench({ resolutionNm: 1e-9 }, { expandedUncertaintyPercent: 1 });
  const adapter = { id: wrench.id, name: 'Crowfoot', lengthMm: 100, angleDeg: 0, lengthStandardUncertaintyMm: 0 };
  const parts = (total: number, ...others: readonly number[]) =>
    Math.sqrt((total / 2) ** 2 - others.reduce((sum, u) => sum + u ** 2, 0));

  it('is that of the wrench without anything on it, and square to the handle', () => {
    expect(uncertaintyAtFastenerNm(100, { wrench })).toBeCloseTo(1, 9);
    expect(uncertaintyAtFastenerNm(100, { wrench, adapter: { ...adapter, angleDeg: 90 } })).toBeCloseTo(1, 9);
  });

  it('counts the length of the adapter: 1 mm on 400 mm lever and 100 mm adapter is 0.2 % of 100 N·m', () => {
    const exact = uncertaintyAtFastenerNm(100, { wrench, adapter })!;
    const measured = uncertaintyAtFastenerNm(100, { wrench, adapter: { ...adapter, lengthStandardUncertaintyMm: 1 } })!;
    expect(parts(measured, exact / 2)).toBeCloseTo(80 / 400, 9);
  });

  it('counts where the hand is: ± 10 mm on 400 mm and 100 mm of adapter', () => {
    const exact = uncertaintyAtFastenerNm(100, { wrench, adapter })!;
    expect(parts(exact, 0.5)).toBeCloseTo((80 * 100 * (10 / Math.sqrt(3))) / 400 ** 2, 9);
  });

  it('counts what an extension was found to bring in', () => {
    const extension = { id: wrench.id, name: 'Bar', lengthMm: 250, torqueStandardUncertaintyPercent: 0.5 };
    expect(uncertaintyAtFastenerNm(100, { wrench, extension })).toBeCloseTo(Math.SQRT2, 9);
  });
});
