import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { roundRange, ticks } from './ticks.ts';

// Computed with d3-scale 4.0.3: scaleLinear().domain([from, to]).ticks(count).
describe('ticks stand where a plotting library of general use puts them', () => {
  it.each([
    [0, 97, 5, [0, 20, 40, 60, 80]],
    [0, 1, 5, [0, 0.2, 0.4, 0.6, 0.8, 1]],
    [-3, 12, 4, [0, 5, 10]],
    [0, 45231, 5, [0, 10000, 20000, 30000, 40000]],
    [0.012, 0.0187, 4, [0.012, 0.014, 0.016, 0.018]],
    [100, 100.4, 6, [100, 100.05, 100.1, 100.15, 100.2, 100.25, 100.3, 100.35, 100.4]],
    [1e-7, 9e-7, 3, [2e-7, 4e-7, 6e-7, 8e-7]],
  ])('from %d to %d, about %d', (from, to, count, expected) => {
    expect(ticks(from, to, count)).toEqual(expected);
  });
});

const range = fc
  .tuple(fc.double({ min: -1e6, max: 1e6, noNaN: true }), fc.double({ min: 1e-3, max: 1e6, noNaN: true }))
  .map(([from, width]) => [from, from + width] as const);

it('are never far from as many as were asked for', () => {
  fc.assert(
    fc.property(range, fc.integer({ min: 3, max: 10 }), ([from, to], count) => {
      const made = ticks(from, to, count).length;
      expect(made).toBeGreaterThanOrEqual(Math.floor(count / 2) - 1);
      expect(made).toBeLessThanOrEqual(2 * count + 1);
    }),
    { seed: 11 },
  );
});

it('widen a range to round figures and lose nothing of it', () => {
  expect(roundRange(3, 97, 5)).toEqual([0, 100]);
  fc.assert(
    fc.property(range, ([from, to]) => {
      const [low, high] = roundRange(from, to, 5);
      const crumb = (Math.abs(from) + Math.abs(to)) * 1e-11;
      expect(low).toBeLessThanOrEqual(from + crumb);
      expect(high).toBeGreaterThanOrEqual(to - crumb);
    }),
    { seed: 12 },
  );
});

it('give a range without width something to stand on', () => {
  expect(ticks(5, 5, 4)).toEqual([]);
  expect(roundRange(0, 0, 4)).toEqual([0, 1]);
  expect(roundRange(5, 5, 4)).toEqual([0, 5]);
});
