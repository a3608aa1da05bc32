import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { crossingOf, linearTrend, type Trend, type TrendPoint, trendAt } from './linear-trend.ts';
import { median, medianDeviation } from './robust.ts';

fc.configureGlobal({ seed: 24 });

const trend = (points: readonly TrendPoint[]): Trend => {
  const line = linearTrend(points);
  if (!line) throw new Error('no line');
  return line;
};

const DRIFT = [0.3, 0.8, 1.0, 1.6, 2.1].map((y, x) => ({ x, y }));

describe('linear trend', () => {
  it('keeps its digits over dates that lie far off', () => {
    const dates = trend(DRIFT.map(({ x, y }) => ({ x: 1.7e12 + x, y })));
    expect(dates.slope).toBeCloseTo(0.44, 12);
    expect(dates.residualSd).toBeCloseTo(trend(DRIFT).residualSd, 12);
  });

  it('takes a weight of two as two points at one place', () => {
    const weighted = trend(DRIFT.map((point, i) => ({ ...point, weight: i === 2 ? 2 : 1 })));
    const doubled = trend([...DRIFT, { x: 2, y: 1.0 }]);
    expect(weighted.slope).toBeCloseTo(doubled.slope, 13);
    expect(weighted.intercept).toBeCloseTo(doubled.intercept, 13);
  });

  it('tells no line through too few points or one place', () => {
    expect(linearTrend(DRIFT.slice(0, 2))).toBeUndefined();
    expect(linearTrend([1, 2, 3].map((y) => ({ x: 5, y })))).toBeUndefined();
  });

  it('reaches a limit where line and band do', () => {
    const line = trend(DRIFT);
    const { at = 0, earliest = 0, latest = 0 } = crossingOf(line, 4, 4, 0.95);
    expect(at).toBeCloseTo((4 - 0.28) / 0.44, 10);
    expect(trendAt(line, earliest, 0.95).prediction[1]).toBeCloseTo(4, 10);
    expect(trendAt(line, latest, 0.95).prediction[0]).toBeCloseTo(4, 10);
    expect(earliest).toBeLessThan(at);
    expect(latest).toBeGreaterThan(at);
  });

  it('never says a limit is reached by a line that leads away from it', () => {
    expect(crossingOf(trend(DRIFT), -4, 4, 0.95)).toEqual({});
  });

  it('has a band whose near side is reached first, on any points', () => {
    const points = fc.array(fc.tuple(fc.integer({ min: 0, max: 50 }), fc.integer({ min: -20, max: 20 })), {
      minLength: 4,
      maxLength: 20,
    });
    fc.assert(
      fc.property(points, (pairs) => {
        const line = linearTrend(pairs.map(([x, y]) => ({ x, y })));
        const { at = Infinity, earliest = -Infinity } = line ? crossingOf(line, 100, 50, 0.95) : {};
        expect(earliest).toBeLessThanOrEqual(at * (1 + 1e-9));
      }),
    );
  });
});

describe('robust figures', () => {
  it('are not moved by one value that is far off', () => {
    const plain = [10.1, 9.8, 10.0, 10.3, 9.9];
    expect(median([...plain, 1e6])).toBeLessThan(10.4);
    expect(medianDeviation([...plain, 1e6])).toBeLessThan(0.4);
    expect(median([3, 1, 2, 4])).toBe(2.5);
  });

  it('give the standard deviation of normal values', () => {
    // 0.6744897501960817 is the upper quartile of the normal distribution (Abramowitz and Stegun, table 26.5).
    expect(medianDeviation([-5, -0.6744897501960817, 0, 0.6744897501960817, 5])).toBeCloseTo(1, 12);
  });
});
