import * as fc from 'fast-check';
import { expect, it } from 'vitest';
import { spread } from './spread.ts';

it('leaves labels that have room where they want to stand', () => {
  expect(spread([10, 90, 50], 20, 0, 100)).toEqual([10, 90, 50]);
});

it('moves one aside that would stand on its neighbour, and both back inside', () => {
  expect(spread([10, 12], 20, 0, 100)).toEqual([10, 30]);
  expect(spread([95, 99], 20, 0, 100)).toEqual([80, 100]);
});

it('keeps order and distance for any number of labels', () => {
  const places = fc.array(fc.integer({ min: 0, max: 300 }), { maxLength: 12 });
  fc.assert(
    fc.property(places, (wanted) => {
      const moved = spread(wanted, 20, 0, 300).toSorted((a, b) => a - b);
      for (let at = 1; at < moved.length; at++) expect(moved[at]! - moved[at - 1]!).toBeGreaterThanOrEqual(20);
      expect(moved[0] ?? 0).toBeGreaterThanOrEqual(0);
      expect(moved.at(-1) ?? 0).toBeLessThanOrEqual(300);
    }),
    { seed: 13 },
  );
});
