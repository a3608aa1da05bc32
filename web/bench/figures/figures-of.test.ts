import { type CalculationName, calculate } from '@clampwright/core/calculations';
import { expect, it } from 'vitest';
import { exampleOf } from '../example.ts';
import { figuresOf } from './figures-of.ts';
import type { Scribe } from './scribe.ts';

const scribe: Scribe = {
  language: 'en',
  units: {},
  say: (word) => word,
  field: (name) => name,
  value: (text) => text,
};

const drawn = (name: CalculationName, more: Readonly<Record<string, unknown>> = {}, units: Scribe['units'] = {}) => {
  const input = { ...exampleOf(name), ...more };
  const result = calculate(name, input);
  return result.ok ? figuresOf(input, result.value, { ...scribe, units }) : [];
};
const plotOf = (figures: ReturnType<typeof drawn>, title: string) => {
  const found = figures.find((figure) => figure.title === title);
  return found?.kind === 'plot' ? found : undefined;
};

it('draws an assembly torque with its scatter, its yield and the shares of the torque', () => {
  const figures = drawn('assembly-torque');
  expect(figures.map(({ title }) => title)).toEqual(['torque-to-preload', 'shares']);
  const { plot } = plotOf(figures, 'torque-to-preload') ?? {};
  expect(plot?.marks.map(({ name }) => name)).toEqual(['band-friction', 'expected', 'yield', 'target']);
});

it('draws yield where the preload is the asked share of it', () => {
  const { plot } = plotOf(drawn('assembly-torque', { utilization: 0.8 }), 'torque-to-preload') ?? {};
  const [limit, point] = [plot?.marks.at(-2), plot?.marks.at(-1)];
  expect(limit?.kind === 'limit' && point?.kind === 'point' && point.at.y / limit.at).toBeCloseTo(0.8, 6);
});

it('shows torque and preload in the units chosen', () => {
  const units = { torqueNm: 'lbf·ft', preloadN: 'lbf' } as const;
  const { plot } = plotOf(drawn('assembly-torque', {}, units), 'torque-to-preload') ?? {};
  expect([plot?.x.label, plot?.y.label]).toEqual(['torque, lbf·ft', 'preload, lbf']);
});

it('begins at the prevailing torque, below which nothing clamps', () => {
  const { plot } = plotOf(drawn('assembly-torque', { prevailingTorqueNm: 12 }), 'torque-to-preload') ?? {};
  const line = plot?.marks.find((mark) => mark.kind === 'line');
  expect(line?.kind === 'line' && line.points[0]).toEqual({ x: 12, y: 0 });
});

it('draws the spread of a preload as drawn, hatched outside of the window', () => {
  const figures = drawn('preload', { draws: 20_000, lowerPreloadN: 39_000 });
  expect(figures.map(({ title }) => title)).toEqual(['torque-to-preload', 'spread', 'contributions', 'shares']);
  const hatched = plotOf(figures, 'spread')?.plot.marks.filter((mark) => mark.kind === 'band' && mark.isHatched);
  expect(hatched?.map(({ name }) => name)).toEqual(['below', 'above']);
  const lower = hatched?.[0];
  expect(lower?.kind === 'band' && Math.max(...lower.points.map(({ x }) => x))).toBe(39);
});

it('draws a bell where nothing was drawn at random', () => {
  const { plot } = plotOf(drawn('preload', { draws: 0 }), 'spread') ?? {};
  const [bell] = plot?.marks ?? [];
  expect(bell?.kind === 'band' && bell.name).toBe('propagated');
});

it('names what the uncertainty comes from, the largest first', () => {
  const found = drawn('preload', { draws: 0 }).find(({ title }) => title === 'contributions');
  const shares = found?.kind === 'bars' ? found.parts.map(({ share }) => share) : [];
  expect(shares.length).toBeGreaterThan(1);
  expect(shares).toEqual(shares.toSorted((a, b) => b - a));
  expect(shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 9);
});

it('leaves undrawn what is better read', () => {
  expect(drawn('wrench-setting')).toEqual([]);
  expect(drawn('tightening-order')).toEqual([]);
});
