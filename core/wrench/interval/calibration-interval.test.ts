import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { calibrationInterval, type IntervalInput } from './calibration-interval.ts';
import type { Found } from './history.ts';
import { cutFor } from './staircase.ts';

fc.configureGlobal({ seed: 24 });

const USUAL: Omit<IntervalInput, 'history'> = {
  method: 'reliability',
  wantedShare: 0.95,
  confidence: 0.95,
  model: 'exponential',
  currentIntervalDays: 365,
  currentIntervalPulls: 5000,
  extension: 0.1,
  shortestDays: 1,
  longestDays: 36_500,
};

const run = (history: readonly Found[], more: Partial<IntervalInput> = {}) =>
  calibrationInterval({ ...USUAL, history, ...more });
const answered = (history: readonly Found[], more: Partial<IntervalInput> = {}) => {
  const result = run(history, more);
  if (!result.ok) throw new Error(JSON.stringify(result.failure));
  return result.value;
};

const GROUPS: readonly Found[] = [
  { days: 180, pulls: 2100, found: 'in', howMany: 9 },
  { days: 180, pulls: 2600, found: 'out', howMany: 1 },
  { days: 365, pulls: 4300, found: 'in', howMany: 14 },
  { days: 365, pulls: 5200, found: 'out', howMany: 4 },
];

describe('reliability', () => {
  it('counts groups as so many calibrations one by one', () => {
    const single = GROUPS.flatMap(({ howMany = 1, ...one }) => Array.from({ length: howMany }, () => one));
    expect(answered(single).intervalDays).toBeCloseTo(answered(GROUPS).intervalDays, 9);
  });

  it('wants a shorter interval for a greater share, and trusts itself less with more confidence', () => {
    const share = fc.double({ min: 0.6, max: 0.99, noNaN: true });
    fc.assert(
      fc.property(share, share, (a, b) => {
        const [less, more] = [Math.min(a, b), Math.max(a, b)];
        expect(answered(GROUPS, { wantedShare: more }).intervalDays).toBeLessThanOrEqual(
          answered(GROUPS, { wantedShare: less }).intervalDays,
        );
        const { lowerDays: wide = 0 } = answered(GROUPS, { confidence: more });
        const { lowerDays: narrow = 0, intervalDays, upperDays = Infinity } = answered(GROUPS, { confidence: less });
        expect(wide).toBeLessThanOrEqual(narrow + 1e-9);
        expect(narrow).toBeLessThanOrEqual(intervalDays);
        expect(intervalDays).toBeLessThanOrEqual(upperDays);
      }),
      { numRuns: 25 },
    );
  });

  it('tells the same in another unit of time', () => {
    const weeks = GROUPS.map((one) => ({ ...one, days: one.days / 7 }));
    for (const model of ['exponential', 'weibull'] as const) {
      expect(answered(weeks, { model }).intervalDays * 7).toBeCloseTo(answered(GROUPS, { model }).intervalDays, 6);
    }
  });

  it('gives days and pulls, and says which comes first', () => {
    expect(answered(GROUPS)).toMatchObject({ basisDays: 'fitted', basisPulls: 'fitted', foundIn: 23, foundOut: 5 });
    expect(answered(GROUPS, { currentIntervalPulls: 100 }).comesFirst).toMatch(/days|pulls/);
    const { fits = [] } = answered(GROUPS);
    expect(fits.map(({ clock, model }) => `${clock} ${model}`)).toEqual([
      'days exponential',
      'days weibull',
      'pulls exponential',
      'pulls weibull',
    ]);
  });

  it('takes a check that was still good as a later beginning', () => {
    const checked = [...GROUPS.slice(0, 3), { days: 365, found: 'out', howMany: 4, goodAtDays: 300 } as const];
    expect(answered(checked).intervalDays).toBeGreaterThan(answered(GROUPS).intervalDays);
  });

  it('does not pretend to know where nothing was ever found out', () => {
    const { basisDays, lowerDays, intervalDays, warnings } = answered([{ days: 365, found: 'in', howMany: 10 }]);
    expect([basisDays, warnings.map(({ code }) => code)]).toEqual(['no-failure', ['nothing-out']]);
    // −ln 0.95 · 3650/−ln(1 − C) at C 0.95 and 0.5, by hand.
    expect(lowerDays).toBeCloseTo(62.495, 2);
    expect(intervalDays).toBeCloseTo(270.1, 1);
  });
});

describe('staircase', () => {
  it('balances extensions and cuts at the wanted share', () => {
    const fraction = fc.double({ min: 0.5, max: 0.9, noNaN: true });
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 1, noNaN: true }), fraction, (extension, share) => {
        const balance = share * Math.log1p(extension) + (1 - share) * Math.log1p(-cutFor(extension, share));
        expect(balance).toBeCloseTo(0, 5);
      }),
    );
  });

  it('is held between the shortest and the longest', () => {
    const out: readonly Found[] = [{ days: 365, found: 'out' }];
    expect(answered(out, { method: 'staircase', shortestDays: 90 })).toMatchObject({
      intervalDays: 90,
      heldAt: 'shortest',
    });
    expect(
      answered([{ days: 365, found: 'in' }], { method: 'staircase', currentIntervalDays: 1050, longestDays: 1095 }),
    ).toMatchObject({ intervalDays: 1095, heldAt: 'longest' });
  });
});

describe('time in use', () => {
  it('brings the day forward for a wrench that is used more', () => {
    const { intervalDays, basisDays } = answered([{ days: 100, pulls: 5000, found: 'in' }], { method: 'in-use-time' });
    expect([intervalDays, basisDays]).toEqual([expect.closeTo(110, 9), 'by-use']);
  });

  it('never puts it off beyond the interval in force', () => {
    const { intervalDays, basisDays } = answered([{ days: 365, pulls: 50, found: 'in' }], { method: 'in-use-time' });
    expect([intervalDays, basisDays]).toEqual([365, 'kept']);
  });
});

describe('control chart of the drift', () => {
  it('ends where mean drift and scatter have used up the limit', () => {
    const history = [0.8, 1.0, 1.2].map((foundPercent) => ({ days: 100, found: 'in', foundPercent }) as const);
    const { intervalDays, drift } = answered(history, { method: 'control-chart', limitPercent: 4 });
    expect(drift?.meanDrift).toBeCloseTo(0.01, 12);
    // t of 2 degrees at 97.5 % is 4.302653 (Abramowitz and Stegun, table 26.10): 4/(0.01 + 4.302653·0.002·√(4/3)).
    expect(intervalDays).toBeCloseTo(200.64, 2);
  });
});

describe('what cannot be is refused with its field', () => {
  it.each<[string, readonly Found[], Partial<IntervalInput>, string]>([
    ['a good check after the calibration', [{ days: 10, found: 'out', goodAtDays: 10 }], {}, 'history[0].goodAtDays'],
    ['a good check of one found in', [{ days: 10, found: 'in', goodAtDays: 5 }], {}, 'history[0].goodAtDays'],
    ['pulls of a check without pulls', [{ days: 10, found: 'out', goodAtPulls: 5 }], {}, 'history[0].goodAtPulls'],
    ['everything found out', [{ days: 10, found: 'out' }], {}, 'history'],
    [
      'a shape that nothing tells',
      [
        { days: 10, found: 'in' },
        { days: 20, found: 'out' },
      ],
      { model: 'weibull' },
      'model',
    ],
    ['no pulls for time in use', [{ days: 10, found: 'in' }], { method: 'in-use-time' }, 'history[0].pulls'],
    ['no limit for the chart', [{ days: 10, found: 'in' }], { method: 'control-chart' }, 'limitPercent'],
    [
      'no deviation',
      [{ days: 10, found: 'in' }],
      { method: 'control-chart', limitPercent: 4 },
      'history[0].foundPercent',
    ],
    ['shortest above longest', [{ days: 10, found: 'in' }], { shortestDays: 9, longestDays: 8 }, 'shortestDays'],
  ])('%s', (_, history, more, field) => {
    expect(run(history, more)).toMatchObject({ ok: false, failure: { kind: 'invalid', field } });
  });
});
