import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { histogram, shareUnder } from './histogram.ts';
import { bringToPlace, coverageIntervals, middleByWeight } from './order-statistics.ts';
import { randomWords } from './random-words.ts';

fc.configureGlobal({ seed: 24 });

const figures = fc.array(fc.integer({ min: -50, max: 50 }), { minLength: 1, maxLength: 400 });

const many = (count: number, seed = 1): Float64Array => {
  const words = randomWords(seed);
  return Float64Array.from({ length: count }, () => words.fraction() ** 2);
};

describe('bringToPlace', () => {
  it('puts the value of every rank where sorting would put it', () => {
    fc.assert(
      fc.property(figures, fc.nat(), (values, seed) => {
        const rank = seed % values.length;
        const column = Float64Array.from(values);
        bringToPlace(column, rank);
        expect(column[rank]).toBe(values.toSorted((a, b) => a - b)[rank]);
        expect(Math.max(-Infinity, ...column.slice(0, rank))).toBeLessThanOrEqual(column[rank]!);
        expect(Math.min(Infinity, ...column.slice(rank + 1))).toBeGreaterThanOrEqual(column[rank]!);
      }),
    );
  });

  it.each([0, 1, 4999, 50_000, 99_998, 99_999])('finds rank %d of many', (rank) => {
    const column = many(100_000);
    const sorted = column.toSorted();
    bringToPlace(column, rank);
    expect(column[rank]).toBe(sorted[rank]);
  });
});

describe('middleByWeight', () => {
  it('is the value at which the sorted weights come to the sum', () => {
    const weighed = fc.array(fc.tuple(fc.integer({ min: -50, max: 50 }), fc.nat({ max: 9 })), { minLength: 1 });
    fc.assert(
      fc.property(weighed, fc.double({ min: 0, max: 1, noNaN: true }), (pairs, share) => {
        const sum = Math.floor(share * pairs.reduce((whole, [, weight]) => whole + weight, 0));
        let come = 0;
        const wanted = pairs.toSorted(([a], [b]) => a - b).find(([, weight]) => (come += weight) >= sum);
        const columns = [0, 1].map((at) => Float64Array.from(pairs, (pair) => pair[at]!));
        expect(middleByWeight(columns[0]!, columns[1]!, sum)).toBe(wanted?.[0]);
      }),
    );
  });
});

describe('coverageIntervals', () => {
  it('are those of the sorted draws', () => {
    const column = many(10_000);
    const sorted = column.toSorted();
    const { symmetric, shortest, bulk } = coverageIntervals(column, 0.95);
    expect(symmetric).toEqual([sorted[249], sorted[9749]]);
    expect(bulk).toEqual([sorted[5], sorted[9994]]);
    const widths = Array.from({ length: 500 }, (_, rank) => sorted[rank + 9500]! - sorted[rank]!);
    expect(shortest[1] - shortest[0]).toBe(Math.min(...widths));
  });

  it('hold 95 % of 1000 draws', () => {
    const column = many(1000);
    const { symmetric } = coverageIntervals(column, 0.95);
    const inside = column.filter((value) => value > symmetric[0] && value <= symmetric[1]);
    expect(inside).toHaveLength(950);
  });
});

describe('histogram and shareUnder', () => {
  it('count every value between the ends once', () => {
    expect(histogram(Float64Array.of(0, 0.5, 1, 1.5, 2, 2.5), [0, 2], 4)).toEqual([1, 1, 1, 2]);
    expect(histogram(Float64Array.of(3, 3), [3, 3], 4)).toEqual([2, 0, 0, 0]);
  });

  it('tell the share under a limit', () => {
    expect(shareUnder(Float64Array.of(1, 2, 3, 4), 3)).toBe(0.5);
  });
});
