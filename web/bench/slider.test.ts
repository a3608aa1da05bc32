import { expect, it } from 'vitest';
import type { FigureShape } from './fields.ts';
import { sliderOf } from './slider.ts';

const bounded = (from: number, to: number) => ({ kind: 'number', range: [from, to] }) as const;

it('reaches over the frictions of the trade in steps of half a hundredth', () => {
  expect(sliderOf('threadFriction', bounded(0, 1))).toEqual({ from: 0.04, to: 0.4, step: 0.005 });
});

it('reaches over a narrow range in a hundred steps, and leaves out nought', () => {
  expect(sliderOf('utilization', bounded(0, 1))).toEqual({ from: 0.01, to: 1, step: 0.01 });
});

it.each<[string, FigureShape]>([
  ['torqueNm', { kind: 'number' }],
  ['draws', bounded(0, 1e7)],
])('%s is typed', (name, shape) => {
  expect(sliderOf(name, shape)).toBeUndefined();
});
