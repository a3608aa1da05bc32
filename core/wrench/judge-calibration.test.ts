import { describe, expect, it } from 'vitest';
import type { Calibration, Comparison } from './calibration.ts';
import { judgeCalibration } from './judge-calibration.ts';
import { aCalibration, aComparison, aReference } from './testing/a-calibration.ts';
import { aWrench } from './testing/a-wrench.ts';

const TODAY = '2026-06-02';
const both = { ...aWrench(), directions: ['clockwise', 'anticlockwise'] as const, madeOn: '2024-05-06' };
const wrench = { ...both, directions: [...both.directions] };

/** The run with the readings of one point changed. */
function withPoint(at: number, change: Partial<Comparison['points'][number]>): Comparison {
  const run = aComparison();
  const back = run.points.map((point) => ({ ...point, direction: 'anticlockwise' as const }));
  return {
    ...run,
    points: [...run.points, ...back].map((point, index) => (index === at ? { ...point, ...change } : point)),
  };
}

describe('a calibration before it is kept', () => {
  it.each<[string, Partial<Calibration>, string]>([
    ['a day to come', { calibratedOn: '2026-06-03' }, 'calibratedOn'],
    ['a day before the wrench was made', { calibratedOn: '2024-05-05' }, 'calibratedOn'],
    ['due before it was done', { dueOn: '2026-05-31' }, 'dueOn'],
    ['a reference that is overdue', { reference: aReference({ dueOn: '2026-05-31' }) }, 'reference.dueOn'],
    ['a reference too small', { reference: aReference({ highestNm: 150 }) }, 'reference.highestNm'],
    ['a zero reference', { asFound: withPoint(5, { referenceNm: [40, 0, 40] }) }, 'asFound.points[5].referenceNm[1]'],
    ['a missing reading', { asFound: withPoint(2, { indicatedNm: [120] }) }, 'asFound.points[2].indicatedNm'],
    ['no reading', { asFound: withPoint(6, { referenceNm: [] }) }, 'asFound.points[6].referenceNm'],
    [
      'readings as left in lbf·ft',
      { asLeft: withPoint(7, { referenceNm: [147, 148] }) },
      'asLeft.points[7].referenceNm',
    ],
    ['points out of order', { asFound: withPoint(1, { targetNm: 10 }) }, 'asFound.points[1].targetNm'],
  ])('is refused by its field: %s', (_, change, field) => {
    expect(judgeCalibration(aCalibration(change), wrench, TODAY)).toMatchObject({ ok: false, failure: { field } });
  });

  it('is kept with fewer repeats than ordered, and says at which point', () => {
    const judged = judgeCalibration(
      aCalibration({ asFound: withPoint(1, { referenceNm: [39.6, 39.7] }) }),
      wrench,
      TODAY,
    );
    expect(judged).toMatchObject({ ok: true });
    const fields = judged.ok ? judged.value.warnings.map(({ field }) => field) : [];
    expect(fields).toContain('points[1].referenceNm');
    expect(fields).not.toContain('points[0].referenceNm');
  });

  it('hands the day and the pulls that were chosen to the wrench', () => {
    const judged = judgeCalibration(aCalibration({ dueAfterPulls: 800 }), wrench, TODAY);
    expect(judged).toMatchObject({ value: { summary: { dueOn: '2027-06-01', dueAfterPulls: 800 } } });
  });
});
