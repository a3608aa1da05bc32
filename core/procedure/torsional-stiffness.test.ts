import { expect, it } from 'vitest';
import { inRowNmPerDeg, roundBarNmPerDeg, squareBarNmPerDeg } from './torsional-stiffness.ts';

it('a thick short bar twists less than a thin long one', () => {
  expect(roundBarNmPerDeg(12.7, 0, 250)).toBeCloseTo(14.139, 3);
  expect(roundBarNmPerDeg(19.05, 0, 400)).toBeCloseTo(44.737, 3);
});

it('a bore takes little off', () => {
  expect(roundBarNmPerDeg(20, 10, 200) / roundBarNmPerDeg(20, 0, 200)).toBeCloseTo(15 / 16, 12);
});

it('a square is as stiff as 88 % of the circle of its area', () => {
  const circleMm = 10 * Math.sqrt(4 / Math.PI);
  expect(squareBarNmPerDeg(10, 50) / roundBarNmPerDeg(circleMm, 0, 50)).toBeCloseTo(0.8834, 3);
});

it('parts in a row add up what they give way', () => {
  expect(inRowNmPerDeg([10, 10])).toBe(5);
  expect(inRowNmPerDeg([14])).toBe(14);
});
