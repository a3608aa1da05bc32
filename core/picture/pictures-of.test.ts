import { expect, it } from 'vitest';
import { z } from 'zod';
import { CALCULATIONS, type CalculationName, calculate } from '../calculations/registry.ts';
import { picturesOf } from './pictures-of.ts';
import type { Scribe } from './scribe.ts';

const scribe: Scribe = { language: 'en', units: {}, field: (name) => name, value: (text) => text };

const drawn = (name: CalculationName, more: Readonly<Record<string, unknown>> = {}, units: Scribe['units'] = {}) => {
  const example = CALCULATIONS.find((calculation) => calculation.name === name)?.example;
  const input = { ...z.record(z.string(), z.unknown()).parse(example), ...more };
  const result = calculate(name, input);
  return result.ok ? picturesOf(input, result.value, { ...scribe, units }) : [];
};
const plotOf = (pictures: ReturnType<typeof drawn>, title: string) => {
  const found = pictures.find((picture) => picture.title === title);
  return found?.kind === 'plot' ? found : undefined;
};

it('draws an assembly torque with its scatter, its yield and the shares of the torque', () => {
  const pictures = drawn('assembly-torque');
  expect(pictures.map(({ title }) => title)).toEqual(['Preload over torque', 'Where the torque goes']);
  const { plot } = plotOf(pictures, 'Preload over torque') ?? {};
  expect(plot?.marks.map(({ name }) => name)).toEqual([
    'Friction a fifth higher or lower',
    'Expected',
    'Yield begins',
    'At the figures given',
  ]);
});

it('draws yield where the preload is the asked share of it', () => {
  const { plot } = plotOf(drawn('assembly-torque', { utilization: 0.8 }), 'Preload over torque') ?? {};
  const [limit, point] = [plot?.marks.at(-2), plot?.marks.at(-1)];
  expect(limit?.kind === 'limit' && point?.kind === 'point' && point.at.y / limit.at).toBeCloseTo(0.8, 6);
});

it('shows torque and preload in the units chosen', () => {
  const units = { torqueNm: 'lbf·ft', preloadN: 'lbf' } as const;
  const { plot } = plotOf(drawn('assembly-torque', {}, units), 'Preload over torque') ?? {};
  expect([plot?.x.label, plot?.y.label]).toEqual(['Torque, lbf·ft', 'Preload, lbf']);
});

it('begins at the prevailing torque, below which nothing clamps', () => {
  const { plot } = plotOf(drawn('assembly-torque', { prevailingTorqueNm: 12 }), 'Preload over torque') ?? {};
  const line = plot?.marks.find((mark) => mark.kind === 'line');
  expect(line?.kind === 'line' && line.points[0]).toEqual({ x: 12, y: 0 });
});

it('draws the spread of a preload as drawn, hatched outside of the window', () => {
  const pictures = drawn('preload', { draws: 20_000, lowerPreloadN: 39_000 });
  expect(pictures.map(({ title }) => title)).toEqual([
    'Preload over torque',
    'Spread of the preload',
    'What the uncertainty comes from',
    'Where the torque goes',
  ]);
  const hatched = plotOf(pictures, 'Spread of the preload')?.plot.marks.filter(
    (mark) => mark.kind === 'band' && mark.isHatched,
  );
  expect(hatched?.map(({ name }) => name)).toEqual(['Below the window', 'Above the window']);
  const lower = hatched?.[0];
  expect(lower?.kind === 'band' && Math.max(...lower.points.map(({ x }) => x))).toBe(39);
});

it('draws a bell where nothing was drawn at random', () => {
  const { plot } = plotOf(drawn('preload', { draws: 0 }), 'Spread of the preload') ?? {};
  const [bell] = plot?.marks ?? [];
  expect(bell?.kind === 'band' && bell.name).toBe('By the law of propagation');
});

it('names what the uncertainty comes from, the largest first', () => {
  const found = drawn('preload', { draws: 0 }).find(({ title }) => title === 'What the uncertainty comes from');
  const shares = found?.kind === 'bars' ? found.parts.map(({ share }) => share) : [];
  expect(shares.length).toBeGreaterThan(1);
  expect(shares).toEqual(shares.toSorted((a, b) => b - a));
  expect(shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 9);
});

it('draws the force of each position and how rounds even out', () => {
  const pictures = drawn('elastic-interaction');
  expect(pictures.map(({ title }) => title)).toEqual([
    'Final force by position',
    'Forces after each round',
    'Spread after each round',
  ]);
  const [bars] = plotOf(pictures, 'Final force by position')?.plot.marks ?? [];
  expect(bars?.kind === 'bars' && bars.points.length).toBe(8);
});

it('draws what friction makes of a plan', () => {
  const found = drawn('round-targets').find(({ title }) => title.startsWith('Spread with friction'));
  expect(found?.kind === 'bars' && found.parts.map(({ name }) => name)).toEqual([
    'planned',
    'plain',
    'plain and round the joint',
  ]);
});

it('marks snug, yield and the end of a turn past yield, and the elastic line that the curve leaves', () => {
  const turn = { propertyClass: '10.9', frictionLow: 0.1, frictionHigh: 0.16, preloadN: undefined, angleDeg: 90 };
  const { plot } = plotOf(drawn('tightening-angle', turn), 'Torque over angle, as expected') ?? {};
  const named = plot?.marks.map(({ kind, name }) => `${kind} ${name}`);
  expect(named).toEqual(expect.arrayContaining(['point Snug', 'point Yield begins', 'point End of the turn']));
  expect(named).toContain('line If all stayed elastic');
  const [elastic, run] = plot?.marks.filter((mark) => mark.kind === 'line') ?? [];
  const beyond = elastic?.points.at(-1);
  const under = run?.points.find(({ x }) => x >= (beyond?.x ?? 0));
  expect(beyond?.y).toBeGreaterThan(under?.y ?? Infinity);
});

it('draws yield ahead of a turn that stays elastic, where torque in proportion to preload puts it', () => {
  const turn = { propertyClass: '8.8', threadFriction: 0.12, bearingFriction: 0.12, preloadN: 180_000 };
  const { plot } = plotOf(drawn('tightening-angle', turn), 'Torque over angle, as expected') ?? {};
  const limit = plot?.marks.find((mark) => mark.kind === 'limit');
  const end = plot?.marks.at(-1);
  const result = calculate('assembly-torque', { thread: 'M24', ...turn, preloadN: undefined, utilization: 1 });
  const yields = z.object({ torqueNm: z.number() }).parse(result.ok ? result.value : {});
  expect(limit?.kind === 'limit' && limit.at).toBeGreaterThan(end?.kind === 'point' ? end.at.y : Infinity);
  expect(limit?.kind === 'limit' && limit.at / yields.torqueNm).toBeCloseTo(1, 1);
});

it('draws each margin of a joint against what is asked for, the worst first, failing ones hatched', () => {
  const [picture] = drawn('joint-check', { axialLoadN: 30_000, threadFriction: 0.1 });
  const parts = picture?.kind === 'bars' ? picture.parts : [];
  const shares = parts.map(({ share }) => share);
  expect(shares).toEqual(shares.toSorted((a, b) => a - b));
  for (const { share, verdict, text, note } of parts) {
    expect([verdict, text.startsWith('does not hold')]).toEqual(share < 1 ? ['over', true] : ['within', false]);
    expect(note).toMatch(/VDI 2230|ISO 898|SAE|ASME/);
  }
  expect(shares[0]).toBeLessThan(1);
});

it('leaves undrawn what is better read', () => {
  expect(drawn('wrench-setting')).toEqual([]);
  expect(drawn('tightening-order')).toEqual([]);
});

it('draws the values of a capability between their limits', () => {
  const { plot } = plotOf(drawn('capability'), 'Values between the limits') ?? {};
  expect(plot?.marks.map(({ kind }) => kind)).toEqual(['band', 'line', 'limit', 'limit', 'limit']);
  const steps = plot?.marks.find((mark) => mark.kind === 'band');
  expect(steps?.points.reduce((sum, { high }) => sum + high / 2, 0)).toBe(25);
});

it('tells the values that complete a signal apart by their shape', () => {
  const { plot } = plotOf(drawn('control-chart'), 'Values in the order of time') ?? {};
  const points = plot?.marks.flatMap((mark) => (mark.kind === 'points' ? [mark] : [])) ?? [];
  expect(points.map(({ sign }) => sign)).toEqual(['dot', 'cross']);
  expect(points[1]?.points.map(({ x }) => x)).toContain(19);
});

it('draws the share still inside its limits down to the one wanted', () => {
  const { plot } = plotOf(drawn('calibration-interval'), 'Share still inside its limits') ?? {};
  expect(plot?.marks.map(({ kind }) => kind)).toEqual(['window', 'line', 'limit', 'limit']);
  expect(
    plotOf(drawn('calibration-interval', { method: 'staircase' }), 'Share still inside its limits'),
  ).toBeUndefined();
});
