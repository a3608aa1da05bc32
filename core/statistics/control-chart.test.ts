import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { controlChart, type RunRule } from './control-chart.ts';

fc.configureGlobal({ seed: 24 });

const series = fc.array(fc.integer({ min: -1000, max: 1000 }), { minLength: 3, maxLength: 60 });

/** Center 0 and sigma 1 by the first values; what is looked at comes after. */
const BASELINE = Array.from({ length: 40 }, (_, i) => (i % 2 === 0 ? 0.564 : -0.564));
const rulesOf = (values: readonly number[], rule: RunRule) =>
  controlChart([...BASELINE, ...values], BASELINE.length)
    .signals.filter((signal) => signal.runRule === rule)
    .map(({ first, last, side }) => [first - BASELINE.length, last - BASELINE.length, side]);

describe('run rules', () => {
  it.each<[RunRule, readonly number[], readonly (readonly [number, number, string])[]]>([
    [
      'beyond-limit',
      [2.9, 3.1, -3.1],
      [
        [2, 2, 'above'],
        [3, 3, 'below'],
      ],
    ],
    ['two-of-three', [2.1, 0, 2.1], [[1, 3, 'above']]],
    ['two-of-three', [2.1, 0, 0, 2.1], []],
    ['two-of-three', [2.1, 0, -2.1], []],
    ['four-of-five', [-1.1, -1.1, 0, -1.1, -1.1], [[1, 5, 'below']]],
    ['four-of-five', [1.1, 1.1, 0.9, 0.9, 1.1], []],
    ['eight-one-side', [0.1, 0.1, 0.1, 0.1, 0.1, 0.1, 0.1, 0.1], [[1, 8, 'above']]],
    ['eight-one-side', [0.1, 0.1, 0.1, 0.1, -0.1, 0.1, 0.1, 0.1], []],
    ['six-trending', [-0.6, -0.2, -0.1, 0, 0.1, 0.2], [[1, 6, 'above']]],
    ['six-trending', [-0.6, -0.2, -0.1, -0.1, 0.1, 0.2], []],
    ['range-beyond-limit', [-2, 2], [[1, 2, 'above']]],
  ])('%s over %j', (rule, values, expected) => {
    expect(rulesOf(values, rule)).toEqual(expected);
  });

  it('sees fourteen that go up and down by turns, and not thirteen', () => {
    const swinging = (count: number) => Array.from({ length: count }, (_, i) => (i % 2 === 0 ? 1 : 1.2));
    const found = (count: number) =>
      controlChart([1, ...swinging(count)]).signals.filter(({ runRule }) => runRule === 'fourteen-alternating').length;
    expect([found(13), found(14)]).toEqual([0, 1]);
  });

  it('find nothing in values that are all the same', () => {
    expect(controlChart([5, 5, 5, 5, 5, 5, 5, 5, 5])).toMatchObject({ lower: 5, upper: 5, signals: [] });
  });
});

describe('the chart', () => {
  it('moves and grows with its values, and keeps its signals', () => {
    fc.assert(
      fc.property(
        series,
        fc.integer({ min: 1, max: 64 }),
        fc.integer({ min: -50, max: 50 }),
        (values, factor, shift) => {
          const plain = controlChart(values);
          const other = controlChart(values.map((value) => value * 8 * factor + shift));
          expect(other.upper).toBeCloseTo(plain.upper * 8 * factor + shift, 5);
          expect(other.signals.filter(({ runRule }) => runRule.startsWith('six'))).toEqual(
            plain.signals.filter(({ runRule }) => runRule.startsWith('six')),
          );
        },
      ),
    );
  });

  it('turned upside down gives the same signals on the other side', () => {
    fc.assert(
      fc.property(series, (values) => {
        const runs = (of: readonly number[]) =>
          controlChart(of).signals.filter(({ runRule }) => runRule === 'beyond-limit');
        const turned = { above: 'below', below: 'above' } as const;
        expect(runs(values.map((value) => -value))).toEqual(
          runs(values).map((signal) => ({ ...signal, side: turned[signal.side] })),
        );
      }),
    );
  });
});
