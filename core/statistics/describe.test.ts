import { expect, it } from 'vitest';
import { describe } from './describe.ts';

it('describes a sample', () => {
  expect(describe([2, 4, 4, 4, 5, 5, 7, 9])).toEqual({
    count: 8,
    mean: 5,
    standardDeviation: Math.sqrt(32 / 7),
    minimum: 2,
    maximum: 9,
  });
});

it('knows no scatter of a single value', () => {
  expect(describe([3])).toEqual({ count: 1, mean: 3, minimum: 3, maximum: 3 });
});

it('loses no digits where values lie close together (NIST StRD NumAcc3: mean 1000000.2, s 0.1)', () => {
  const values = [1_000_000.2, ...Array.from({ length: 1000 }, (_, i) => (i % 2 === 0 ? 1_000_000.1 : 1_000_000.3))];
  const { mean, standardDeviation = 0 } = describe(values);
  expect(mean).toBeCloseTo(1_000_000.2, 8);
  expect(standardDeviation).toBeCloseTo(0.1, 9);
});
