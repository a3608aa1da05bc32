import { expect, it } from 'vitest';
import { evennessOf } from './evenness.ts';

it('tells largest less smallest and the standard deviation of these bolts, both over the mean', () => {
  expect(evennessOf([90, 110])).toEqual({ meanN: 100, spread: 0.2, coefficientOfVariation: 0.1 });
  expect(evennessOf([0, 0])).toEqual({ meanN: 0, spread: 0, coefficientOfVariation: 0 });
});
