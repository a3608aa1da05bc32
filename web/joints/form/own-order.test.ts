import * as fc from 'fast-check';
import { expect, it } from 'vitest';
import { outOfPlace, positionsIn, stillMissing, tapped } from './own-order.ts';

it('puts a tapped position at the end and takes it out when it is tapped again', () => {
  expect(tapped([1, 5], 3)).toEqual([1, 5, 3]);
  expect(tapped([1, 5, 3], 5)).toEqual([1, 3]);
});

it('never holds a position twice, however it is tapped', () => {
  fc.assert(
    fc.property(fc.array(fc.integer({ min: 1, max: 9 })), (taps) => {
      const order = taps.reduce<readonly number[]>(tapped, []);
      expect(new Set(order).size).toBe(order.length);
      expect([...order, ...stillMissing(order, 9)].toSorted((a, b) => a - b)).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9]);
    }),
    { seed: 11 },
  );
});

it.each(['1 5 3 7', '1, 5, 3, 7', '1-5-3-7', '1;5;3;7'])('reads the typed list %s', (text) => {
  expect(positionsIn(text)).toEqual([1, 5, 3, 7]);
});

it('names what comes twice and what is not there, each once', () => {
  expect(outOfPlace([1, 3, 3, 99, 3, 0], 4)).toEqual([3, 99, 0]);
  expect(outOfPlace([4, 3, 2, 1], 4)).toEqual([]);
});
