import { describe, expect, it } from 'vitest';
import { sayDrift } from '../language/care/drift.ts';
import { type DeviationOn, driftOf } from './drift.ts';

const on = (day: string, deviationPercent: number, isAdjusted = false): DeviationOn => ({
  on: day,
  deviationPercent,
  standardUncertaintyPercent: 0.3,
  isAdjusted,
});

// A line of 0.44 a step from 0.28 on, scatter 0.1095, reckoned aside: it meets 4 at step 8.455, the upper side of its
// 95 % band at 6.942. One step is a year here.
const YEARLY = [0.3, 0.8, 1, 1.6, 2.1].map((deviation, step) => on(`${2019 + step}-01-01`, deviation));

describe('the drift of a wrench', () => {
  it('tells when line and band leave the limits', () => {
    const { outlook, slopePercentPerYear, isTrend } = driftOf(YEARLY, 4);
    expect(slopePercentPerYear).toBeCloseTo(0.44, 3);
    expect(isTrend).toBe(true);
    expect(outlook).toEqual({ kind: 'leaves', earliest: '2025-12', about: '2027-06' });
  });

  it('says it in words', () => {
    expect(sayDrift(driftOf(YEARLY, 4), 'en')).toMatch(
      /^It changes by 0\.44\u00a0% a year, ±\u00a00\.11\u00a0% \(95\u00a0%\)\. By its trend it leaves its limits about June 2027\. A reading may leave its limits from December 2025 on \(95\u00a0% confidence\)\.$/,
    );
    expect(sayDrift(driftOf(YEARLY, 4), 'de')).toContain('etwa im Juni 2027');
  });

  it('begins anew at an adjustment', () => {
    const history = [on('2020-01-01', 3.9), on('2020-01-01', 0.1, true), on('2021-01-01', 0.2)];
    expect(driftOf(history, 4)).toMatchObject({ outlook: { kind: 'too-few', count: 2 }, history: history.slice(1) });
  });

  it('tells no trend where there is none', () => {
    const steady = driftOf(
      [0.1, -0.1, 0.1, -0.1].map((d, n) => on(`${2020 + n}-01-01`, d)),
      4,
    );
    expect(steady).toMatchObject({ isTrend: false, outlook: { kind: 'stays', years: 5 } });
    expect(sayDrift(steady, 'en')).toContain('No trend can be told from chance.');
  });

  it('says so where it is outside already, or nothing is known', () => {
    expect(driftOf([on('2020-01-01', 4.1)], 4).outlook).toEqual({ kind: 'out-already' });
    expect(driftOf([], 4).outlook).toEqual({ kind: 'too-few', count: 0 });
    expect(driftOf([on('2020-01-01', 1), on('2020-01-01', 1), on('2020-01-01', 1)], 4).outlook.kind).toBe('too-few');
  });
});
