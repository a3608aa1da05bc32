import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type CalibrationReadings, evaluateCalibration } from './evaluate-calibration.ts';

fc.configureGlobal({ seed: 24 });

const readings = (more: Partial<CalibrationReadings> = {}): CalibrationReadings => ({
  type: 'I',
  class: 'C',
  maxTorqueNm: 200,
  resolutionNm: 0.1,
  points: [40, 120, 200].map((targetNm) => ({
    targetNm,
    referenceNm: [0.99, 1.01, 1, 0.995, 1.005].map((share) => share * targetNm),
  })),
  ...more,
});
const evaluated = (more: Partial<CalibrationReadings> = {}) => {
  const result = evaluateCalibration(readings(more));
  if (!result.ok) throw new Error(JSON.stringify(result.failure));
  return result.value;
};

describe('a calibration', () => {
  // The budget with these figures was reckoned aside from the guide's formulas: u_c 0.535846 N·m, W 1.06129 %.
  it('adds every contribution in quadrature', () => {
    const { points, budget } = evaluated({
      maxTorqueNm: 101,
      resolutionNm: 0.5,
      points: [{ targetNm: 101, referenceNm: [102.1, 101.4, 99.8, 100.6, 101] }],
      referenceUncertaintyPercent: 0.5,
      reproducibility: 0.4,
      outputInterface: 0.3,
      driveInterface: 0.2,
      leverVariation: 0.6,
    });
    expect(points[0]?.expandedUncertaintyPercent).toBeCloseTo(1.06129, 5);
    const sum = budget.reduce((total, { contribution }) => total + contribution ** 2, 0);
    expect(Math.sqrt(sum)).toBeCloseTo(points[0]?.standardUncertaintyPercent ?? 0, 14);
    expect(budget.every(({ assumed }) => !assumed)).toBe(true);
  });

  it('refers the deviation to the reference, not to the wrench', () => {
    const { points } = evaluated({ points: [{ targetNm: 100, referenceNm: [96, 104.2] }] });
    expect(points[0]?.deviationsPercent).toEqual([expect.closeTo(4.1667, 4), expect.closeTo(-4.0307, 4)]);
  });

  it('does not conform for one deviation beyond the limit, whatever the mean', () => {
    const { points, conforms, permissibleDeviationPercent } = evaluated({
      points: [{ targetNm: 100, referenceNm: [100, 100, 100, 100, 104.5] }],
    });
    expect(permissibleDeviationPercent).toBe(4);
    expect(Math.abs(points[0]?.meanDeviationPercent ?? 9)).toBeLessThan(1);
    expect(conforms).toBe(false);
  });

  it('conforms with a deviation exactly on the limit', () => {
    expect(evaluated({ points: [{ targetNm: 104, referenceNm: [100, 100, 100, 100, 100] }] }).conforms).toBe(true);
  });

  it('takes what the wrench showed where it was read, so that aiming high is no scatter', () => {
    const { points } = evaluated({
      points: [{ targetNm: 100, indicatedNm: [99, 100, 101], referenceNm: [98, 99, 100] }],
    });
    expect(points[0]?.repeatabilityPercent).toBeCloseTo(0, 12);
    expect(points[0]?.meanDeviationPercent).toBeCloseTo((100 * (1 / 98 + 1 / 99 + 1 / 100)) / 3, 12);
  });

  it('marks what was not measured, and what the standard orders more of', () => {
    const { budget, warnings } = evaluated({ points: [{ targetNm: 120, referenceNm: [120, 121, 120] }] });
    expect(budget.filter(({ assumed }) => assumed).map(({ source }) => source)).toEqual([
      'reference',
      'reproducibility',
      'outputInterface',
      'driveInterface',
      'leverVariation',
    ]);
    expect(warnings.map(({ field }) => field)).toEqual([
      'points[0].referenceNm',
      'points',
      'points',
      'referenceUncertaintyPercent',
      'reproducibility',
      'outputInterface',
      'driveInterface',
      'leverVariation',
    ]);
  });

  it('never gets surer by a further contribution', () => {
    const part = fc.double({ min: 0, max: 5, noNaN: true });
    fc.assert(
      fc.property(part, part, part, (a, b, c) => {
        const w = (leverVariation: number) =>
          evaluated({ referenceUncertaintyPercent: a, reproducibility: b, leverVariation }).points[0]
            ?.standardUncertaintyPercent ?? 0;
        expect(w(c + 1)).toBeGreaterThan(w(c));
      }),
    );
  });
});

describe('bad readings', () => {
  const at = (targetNm: number, ...referenceNm: number[]) => ({ targetNm, referenceNm });
  it.each<[string, Partial<CalibrationReadings>, string, string]>([
    ['a class of the other type', { class: 'G' }, 'class', 'one of A, B, C, D, E'],
    ['a missing repeat', { points: [{ ...at(40, 40, 40), indicatedNm: [40] }] }, 'points[0].indicatedNm', '1 reading'],
    ['no repeats', { points: [at(40)] }, 'points[0].referenceNm', 'too few repeats'],
    ['one repeat', { points: [at(40, 40)] }, 'points[0].referenceNm', 'too few repeats'],
    ['a zero reference', { points: [at(40, 40, 0, 40)] }, 'points[0].referenceNm[1]', 'reference of 0'],
    ['targets out of order', { points: [at(120, 120, 120), at(40, 40, 40)] }, 'points[1].targetNm', 'out of order'],
    ['the same target twice', { points: [at(40, 40, 40), at(40, 40, 40)] }, 'points[1].targetNm', 'out of order'],
    ['a target above the range', { points: [at(250, 250, 250)] }, 'points[0].targetNm', 'above the range'],
    ['lbf·ft', { points: [at(100, 73.6, 73.9)] }, 'points[0].referenceNm', 'factor of 1.356'],
    ['a wrench in lbf·ft', { points: [at(100, 136, 135)] }, 'points[0].referenceNm', 'factor of 1.356'],
    ['lbf·in', { points: [at(100, 885, 889)] }, 'points[0].referenceNm', 'factor of 8.85'],
    ['kgf·m', { points: [at(100, 10.1, 10.3)] }, 'points[0].referenceNm', 'factor of 9.81'],
    ['readings of another target', { points: [at(40, 120, 121)] }, 'points[0].referenceNm', 'another target'],
    [
      'a wrench read in lbf·ft',
      { points: [{ ...at(100, 100, 101), indicatedNm: [73.7, 74] }] },
      'points[0].indicatedNm',
      'factor of 1.356',
    ],
  ])('are refused: %s', (_, more, field, said) => {
    const refused = evaluateCalibration(readings(more));
    expect(refused).toMatchObject({ ok: false, failure: { kind: 'invalid', field } });
    expect(JSON.stringify(refused)).toContain(said);
  });
});
