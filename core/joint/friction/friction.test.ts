import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { ThreadAndBearing } from '../torque/thread-and-bearing.ts';
import { torqueForPreload } from '../torque/torque-for-preload.ts';
import { frictionOfTest } from './friction-of-test.ts';
import { type FrictionInput, friction } from './friction-series.ts';

fc.configureGlobal({ seed: 24 });

const M12: ThreadAndBearing = {
  majorDiameterMm: 12,
  pitchMm: 1.75,
  pitchDiameterMm: 10.8633,
  sectionDiameterMm: 10.3582,
  bearingOuterMm: 16.63,
  holeMm: 13.5,
};

const found = (input: Partial<FrictionInput>) => {
  const result = friction({ thread: 'M12', ...input });
  if (!result.ok) throw new Error(JSON.stringify(result.failure));
  return result.value;
};

describe('friction of one test', () => {
  it('leads back to the friction that the torque was worked out with', () => {
    const coefficient = fc.double({ min: 0.02, max: 0.6, noNaN: true });
    fc.assert(
      fc.property(
        coefficient,
        coefficient,
        fc.double({ min: 1e3, max: 2e5, noNaN: true }),
        (thread, bearing, preloadN) => {
          const { torqueNm, shares } = torqueForPreload(preloadN, M12, { thread, bearing });
          const threadTorqueNm = torqueNm * (1 - shares.bearing);
          const back = frictionOfTest({ torqueNm, threadTorqueNm, preloadN }, M12);
          expect(back).toMatchObject({
            value: { thread: expect.closeTo(thread, 10), bearing: expect.closeTo(bearing, 10) },
          });
        },
      ),
    );
  });

  it('lies between thread and bearing when both are told', () => {
    const { total, thread = 0, bearing = 0 } = found({ torqueNm: 80, threadTorqueNm: 38, preloadN: 40_000 });
    expect(total).toBeGreaterThan(Math.min(thread, bearing));
    expect(total).toBeLessThan(Math.max(thread, bearing));
  });

  it('tells thread and bearing only when the rig does', () => {
    const { thread, bearing, statistics, steps } = found({ torqueNm: 80, preloadN: 40_000 });
    expect([thread, bearing, statistics.length, steps.map(({ symbol }) => symbol)]).toEqual([
      undefined,
      undefined,
      0,
      ['μ_tot', 'K'],
    ]);
  });
});

describe('friction of a series', () => {
  const tests = Array.from({ length: 12 }, (_, i) => ({
    torqueNm: 80 + i,
    threadTorqueNm: 38 + i / 2,
    preloadN: 40_000,
  }));

  it('is told by its means, with the scatter of each quantity', () => {
    const { total, statistics, found: each, warnings } = found({ tests });
    expect(statistics.map(({ quantity, count }) => [quantity, count])).toEqual([
      ['total', 12],
      ['thread', 12],
      ['bearing', 12],
      ['nutFactor', 12],
    ]);
    expect(total).toBeCloseTo(each.reduce((sum, one) => sum + one.total, 0) / 12, 14);
    expect(statistics[3]).toMatchObject({
      mean: expect.closeTo(85.5 / 480, 12),
      standardDeviation: expect.closeTo(Math.sqrt(13) / 480, 12),
      minimum: expect.closeTo(80 / 480, 12),
      maximum: expect.closeTo(91 / 480, 12),
      coefficientOfVariation: expect.closeTo(Math.sqrt(13) / 85.5, 12),
    });
    expect(warnings).toEqual([]);
  });

  it('says when it is short, and when some tests do not tell the thread apart', () => {
    const [first] = tests;
    const { warnings, thread } = found({ tests: [first!, { torqueNm: 80, preloadN: 40_000 }] });
    expect(warnings.map(({ message }) => message)).toEqual([
      expect.stringContaining('2 tests'),
      expect.stringContaining('not told apart'),
    ]);
    expect(thread).toBeUndefined();
  });
});

describe('a test that cannot be is refused with its field', () => {
  it.each<[string, Partial<FrictionInput>, string, string]>([
    ['kilonewtons for newtons', { torqueNm: 80, preloadN: 40 }, 'torqueNm', 'above 1'],
    ['a torque that does not turn the pitch', { torqueNm: 8, preloadN: 40_000 }, 'torqueNm', 'without friction'],
    [
      'a thread that takes all',
      { torqueNm: 80, threadTorqueNm: 80, preloadN: 40_000 },
      'threadTorqueNm',
      'nothing is left',
    ],
    ['a thread without friction', { torqueNm: 80, threadTorqueNm: 11, preloadN: 40_000 }, 'threadTorqueNm', 'pitch'],
    ['no torque', { preloadN: 40_000 }, 'torqueNm', 'missing'],
    ['no preload', { torqueNm: 80 }, 'preloadN', 'missing'],
    ['a test and a series', { torqueNm: 80, preloadN: 1, tests: [{ torqueNm: 80, preloadN: 4e4 }] }, 'tests', 'both'],
    [
      'one of a series',
      {
        tests: [
          { torqueNm: 80, preloadN: 4e4 },
          { torqueNm: 80, preloadN: 4 },
        ],
      },
      'tests[1].torqueNm',
      'above 1',
    ],
    [
      'a bearing circle inside of the hole',
      { bearingOuterMm: 13, torqueNm: 80, preloadN: 4e4 },
      'bearingOuterMm',
      'inside',
    ],
  ])('%s', (_, input, field, message) => {
    expect(friction({ thread: 'M12', ...input })).toMatchObject({
      failure: { kind: 'invalid', field, message: expect.stringContaining(message) },
    });
  });
});
