import { describe, expect, it } from 'vitest';
import { layOutPlot } from './lay-out.ts';
import type { Plot } from './plot.ts';

const PLOT: Plot = {
  x: { label: 'Torque, N·m', from: 0 },
  y: { label: 'Preload, kN', from: 0 },
  marks: [
    {
      kind: 'line',
      name: 'expected',
      points: [
        { x: 0, y: 0 },
        { x: 97, y: 40 },
      ],
    },
    { kind: 'limit', name: 'lower', along: 'x', at: 80 },
    { kind: 'limit', name: 'upper', along: 'x', at: 80.1 },
    { kind: 'point', name: 'target', at: { x: 50, y: 20 } },
  ],
};
const PAPER = { width: 360, height: 280, letter: 14 };
const layout = layOutPlot(PLOT, PAPER, 'de');
const shape = <Kind extends (typeof layout.shapes)[number]['kind']>(kind: Kind) =>
  layout.shapes.filter((one): one is Extract<(typeof layout.shapes)[number], { kind: Kind }> => one.kind === kind);

it('begins and ends its axes at a figure', () => {
  expect(layout.xTicks[0]).toEqual({ at: layout.frame.left, text: '0' });
  expect(layout.xTicks.at(-1)).toEqual({ at: expect.closeTo(layout.frame.right, 9), text: '100' });
  expect(layout.yTicks.at(-1)).toEqual({ at: expect.closeTo(layout.frame.top, 9), text: '40' });
});

it('draws upwards what grows', () => {
  const { left, right, top, bottom } = layout.frame;
  const end = left + 0.97 * (right - left);
  expect(shape('line')[0]?.path).toBe(`M${round(left)} ${round(bottom)}L${round(end)} ${round(top)}`);
});
const round = (value: number) => Math.round(value * 100) / 100;

it('numbers limits and points in their order, and keeps numbers of close limits apart', () => {
  const [lower, upper] = shape('limit');
  expect([lower?.number, upper?.number, shape('point')[0]?.number]).toEqual([1, 2, 3]);
  expect((upper?.x ?? 0) - (lower?.x ?? 0)).toBeGreaterThanOrEqual(1.7 * PAPER.letter);
});

it('writes the figures of the axes in the language', () => {
  const small: Plot = { x: { label: 'x', from: 0, to: 1 }, y: { label: 'y', from: 0, to: 1 }, marks: [] };
  expect(layOutPlot(small, PAPER, 'de').xTicks[1]?.text).toBe('0,2');
});

describe('a density', () => {
  const bare: Plot = { ...PLOT, y: { label: '', isBare: true } };
  it('has no figures at its side and takes their room', () => {
    const laid = layOutPlot(bare, PAPER, 'en');
    expect(laid.yTicks).toEqual([]);
    expect(laid.frame.left).toBeLessThan(layout.frame.left);
  });
});

it('closes a band and a window', () => {
  const marks: Plot['marks'] = [
    { kind: 'band', name: 'scatter', points: [0, 10].map((x) => ({ x, low: x, high: 2 * x })) },
    { kind: 'window', name: 'window', along: 'y', from: 5, to: 10 },
  ];
  const laid = layOutPlot({ x: { label: 'x' }, y: { label: 'y' }, marks }, PAPER, 'en');
  expect(laid.shapes.map((one) => 'path' in one && one.path.match(/[MLZ]/g)?.join(''))).toEqual(['MLLLZ', 'MLLLZ']);
});

it('stands on paper without marks', () => {
  const empty = layOutPlot({ x: { label: 'x' }, y: { label: 'y' }, marks: [] }, PAPER, 'en');
  expect(empty.shapes).toEqual([]);
  expect(empty.xTicks.length).toBeGreaterThan(1);
});

describe('measured places and bars', () => {
  const axes = { x: { label: 'x', from: 0, to: 4 }, y: { label: 'y' } } as const;
  const points = [
    { x: 1, y: 12 },
    { x: 3, y: 15, low: 13, high: 18 },
  ];

  it.each([
    ['dot', 'MAAZMAAZ'],
    ['cross', 'MLMLMLML'],
  ] as const)('draw each as a %s, and how far it is uncertain', (sign, letters) => {
    const [drawn] = layOutPlot({ ...axes, marks: [{ kind: 'points', name: 'm', sign, points }] }, PAPER, 'en').shapes;
    expect(drawn?.kind === 'points' && drawn.path.match(/[MLAZ]/g)?.join('')).toBe(letters);
    expect(drawn?.kind === 'points' && drawn.whiskers.match(/[ML]/g)?.join('')).toBe('MLMLML');
  });

  it('give the axis room for the uncertainty', () => {
    const laid = layOutPlot({ ...axes, marks: [{ kind: 'points', name: 'm', sign: 'dot', points }] }, PAPER, 'en');
    expect(laid.yTicks.map(({ text }) => text).slice(-1)).toEqual(['18']);
  });

  it('stand bars on nought, with room for their breadth', () => {
    const plot: Plot = {
      x: { label: 'x' },
      y: { label: 'y' },
      marks: [{ kind: 'bars', name: 'force', breadth: 1, points }],
    };
    const laid = layOutPlot(plot, PAPER, 'en');
    expect([laid.yTicks[0]?.text, laid.xTicks[0]?.text, laid.xTicks.at(-1)?.text]).toEqual(['0', '0', '4']);
    const [bars] = laid.shapes;
    expect(bars?.kind === 'bars' && bars.path.match(/Z/g)?.length).toBe(2);
  });
});

it('writes words in place of figures at an axis that has its own', () => {
  const ticks = ['N1', 'N2', 'N3'].map((text, index) => ({ at: index + 1, text }));
  const laid = layOutPlot({ x: { label: 'x', from: 0.5, to: 2.5, ticks }, y: { label: 'y' }, marks: [] }, PAPER, 'en');
  expect(laid.xTicks.map(({ text }) => text)).toEqual(['N1', 'N2']);
});
