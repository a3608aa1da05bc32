import * as fc from 'fast-check';
import { expect, it } from 'vitest';
import { partBar } from './bars.ts';

it('lays the shares end to end', () => {
  expect(partBar([0.1, 0.4, 0.5], 200)).toEqual([
    { left: 0, width: 20 },
    { left: 20, width: 80 },
    { left: 100, width: 100 },
  ]);
});

it('fills the bar, whatever the shares add up to', () => {
  const shares = fc.array(fc.double({ min: 0.01, max: 1e4, noNaN: true }), { minLength: 1, maxLength: 9 });
  fc.assert(
    fc.property(shares, (given) => {
      const last = partBar(given, 300).at(-1);
      expect((last?.left ?? 0) + (last?.width ?? 0)).toBeCloseTo(300, 6);
    }),
    { seed: 14 },
  );
});

it('has nothing to lay where every share is nought', () => {
  expect(partBar([0, 0], 100).map(({ width }) => width)).toEqual([0, 0]);
});
