import { expect, it } from 'vitest';
import { bell } from './density.ts';

it('is highest in the middle and falls to exp(-1/2) at one standard deviation', () => {
  const points = bell(50, 2, [52]);
  expect(Math.max(...points.map(({ y }) => y))).toBe(1);
  expect(points.find(({ x }) => x === 52)?.y).toBeCloseTo(Math.exp(-0.5), 12);
});

it('has a point at each cut that lies on it, once, and stays in order', () => {
  const xs = bell(50, 2, [50, 51.234, 1000]).map(({ x }) => x);
  expect(xs.filter((x) => x === 51.234 || x === 50)).toEqual([50, 51.234]);
  expect(xs).toEqual(xs.toSorted((a, b) => a - b));
});
