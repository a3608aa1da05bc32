import { describe, expect, it } from 'vitest';
import { aCalibration, aComparison } from '../testing/a-calibration.ts';
import { aWrench } from '../testing/a-wrench.ts';
import { careSpans } from './care-spans.ts';
import type { Found } from './history.ts';
import { intervalProposals } from './proposals.ts';

const shown = (calibratedOn: string, share: number, left?: number) =>
  aCalibration({ id: calibratedOn, calibratedOn, asFound: run(share), ...(left ? { asLeft: run(left) } : {}) });
const run = (share: number) =>
  aComparison({
    points: [20, 40, 120, 200].map((targetNm) => ({
      direction: 'clockwise',
      targetNm,
      referenceNm: Array.from({ length: 5 }, () => targetNm / share),
    })),
  });
const care = {
  wrench: aWrench(),
  summaries: [{ calibratedOn: '2023-01-01' }, { calibratedOn: '2024-01-01' }, { calibratedOn: '2025-01-01' }],
  calibrations: [shown('2024-01-01', 1.01), shown('2025-01-01', 1.08, 1)],
  checks: [
    {
      id: 'k',
      wrenchId: 'w',
      at: '2024-07-01T08:00:00.000Z',
      by: 'a keeper',
      checker: 'a checker',
      direction: 'clockwise',
      indicatedNm: 101,
      referenceNm: 100,
    },
  ],
} as const;

describe('the spans between calibrations', () => {
  it('tell how the wrench was found, since when it may have been wrong, and how far it moved', () => {
    const [paper, second] = careSpans(care);
    expect(paper).toEqual({ after: '2023-01-01', to: '2024-01-01', found: { days: 365, found: 'in' } });
    // 2024 is a leap year: 1 July is day 182
    expect(second?.found).toMatchObject({ days: 366, found: 'out', goodAtDays: 182 });
    expect(second?.found.foundPercent).toBeCloseTo(8, 9);
    expect(second?.found.leftPercent).toBeCloseTo(1, 9);
  });

  it('do not begin where the wrench was left off, nor take a check that its uncertainty may have deceived', () => {
    const off = { ...care, summaries: [{ calibratedOn: '2024-01-01', conforms: false }] as const };
    expect(careSpans(off)).toEqual([]);
    const [check] = care.checks;
    const unsure = { ...care, checks: [{ ...check, expandedUncertaintyPercent: 5 }] };
    expect(careSpans(unsure)[1]?.found).not.toHaveProperty('goodAtDays');
  });
});

describe('proposals', () => {
  const usual: readonly Found[] = [{ days: 365, pulls: 7300, found: 'in' }];
  const proposed = (own: readonly Found[], kind = own) =>
    intervalProposals({ own, kind, limitPercent: 4, currentIntervalDays: 365, currentIntervalPulls: 5000 });

  it('lengthen by a tenth after one found in, and are due when the pulls come first', () => {
    const [staircase] = proposed(usual);
    expect(staircase).toMatchObject({ method: 'staircase', restsOn: 'own' });
    expect(staircase?.interval).toMatchObject({ value: { comesFirst: 'pulls' } });
    // 20 pulls a day, 5,500 pulls
    expect(staircase?.dueAfterDays).toBe(275);
  });

  it('rest the reliability on every wrench of the kind', () => {
    const kind: readonly Found[] = [
      { days: 365, found: 'in', howMany: 14 },
      { days: 365, found: 'out', howMany: 2 },
    ];
    const reliability = proposed(usual, kind).find(({ method }) => method === 'reliability');
    expect(reliability?.interval).toMatchObject({ value: { foundIn: 14, foundOut: 2, basisDays: 'fitted' } });
    // all at one age: S(365) = 14/16, so t(0.95) = 365 · ln 0.95 / ln 0.875, in closed form
    const days = reliability?.interval.ok ? reliability.interval.value.intervalDays : undefined;
    expect(days).toBeCloseTo((365 * Math.log(0.95)) / Math.log(14 / 16), 4);
  });

  it('refuse with a reason where nothing is known', () => {
    expect(proposed([]).every(({ interval }) => !interval.ok)).toBe(true);
    expect(proposed(usual).find(({ method }) => method === 'control-chart')?.interval.ok).toBe(false);
  });
});
