import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type JointDrawing, jointDrawing } from './joint-drawing.ts';
import type { Layout } from './layout.ts';
import { fillingOf } from './testing/inside-path.ts';

fc.configureGlobal({ seed: 24 });

const ring = (count: number, diameterMm = 400): Layout => ({
  kind: 'circle',
  count,
  diameterMm,
  firstAngleDeg: 0,
  direction: 'clockwise',
});
const grid = (rows: number, columns: number, edgeOnly = false): Layout => ({
  kind: 'rectangle',
  rows,
  columns,
  pitchXMm: 30,
  pitchYMm: 55,
  edgeOnly,
});

const EVERY_KIND: readonly (readonly [string, Layout])[] = [
  ['a circle of 1', ring(1)],
  ['a circle of 2', ring(2)],
  ['a circle of 8', ring(8)],
  ['a circle of 200', ring(200, 5000)],
  ['a grid of 200', grid(10, 20)],
  ['a single row', grid(1, 5, true)],
  ['a single column', grid(5, 1, true)],
  ['an edge of 200', grid(51, 51, true)],
  ['one fastener', grid(1, 1)],
  ['a line of 200', { kind: 'line', count: 200, pitchMm: 5 }],
  ['a line of 2', { kind: 'line', count: 2, pitchMm: 80 }],
  [
    'points',
    {
      kind: 'points',
      points: [
        { xMm: 0, yMm: 0 },
        { xMm: 90, yMm: 5 },
        { xMm: 40, yMm: 70 },
        { xMm: 41, yMm: 30 },
      ],
    },
  ],
  ['one point', { kind: 'points', points: [{ xMm: 7, yMm: 7 }] }],
];

/** Pairs of spots, and how far their rims stand apart. */
function leastRimGap({ spots }: JointDrawing): number {
  let least = Number.POSITIVE_INFINITY;
  for (const [index, a] of spots.entries()) {
    for (const b of spots.slice(0, index)) {
      least = Math.min(least, Math.hypot(a.xMm - b.xMm, a.yMm - b.yMm) - a.radiusMm - b.radiusMm);
    }
  }
  return least;
}

/** Corners of the box of each number, digits 0.6 of their height wide. */
const labelBoxes = ({ spots, labelSizeMm }: JointDrawing) =>
  spots.map(({ position, labelXMm, labelYMm }) => {
    const [halfX, halfY] = [0.3 * labelSizeMm * String(position).length, labelSizeMm / 2];
    return { left: labelXMm - halfX, right: labelXMm + halfX, top: labelYMm - halfY, bottom: labelYMm + halfY };
  });

type Box = ReturnType<typeof labelBoxes>[number];

const covers = (box: Box, { xMm, yMm, radiusMm }: JointDrawing['spots'][number]): boolean =>
  Math.hypot(Math.max(box.left - xMm, 0, xMm - box.right), Math.max(box.top - yMm, 0, yMm - box.bottom)) <
  radiusMm * 0.98;

const overlap = (a: Box, b: Box): boolean =>
  a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;

describe('joint drawing', () => {
  it.each(EVERY_KIND)('of %s keeps its spots apart', (_, layout) => {
    expect(leastRimGap(jointDrawing(layout))).toBeGreaterThan(0);
  });

  it.each(EVERY_KIND)('of %s keeps the numbers off the spots and off each other', (_, layout) => {
    const drawing = jointDrawing(layout);
    const boxes = labelBoxes(drawing);
    expect(boxes.filter((box) => drawing.spots.some((spot) => covers(box, spot)))).toEqual([]);
    expect(boxes.filter((box, index) => boxes.slice(0, index).some((other) => overlap(box, other)))).toEqual([]);
  });

  it.each(EVERY_KIND)('of %s keeps spots on the part and all in sight', (_, layout) => {
    const drawing = jointDrawing(layout);
    const { x, y, width, height } = drawing.viewBox;
    const part = fillingOf(drawing.outline.join(''));
    for (const { xMm, yMm, radiusMm } of drawing.spots) {
      for (const [dx, dy] of [
        [0, 0],
        [radiusMm, 0],
        [-radiusMm, 0],
        [0, radiusMm],
        [0, -radiusMm],
      ] as const) {
        expect(part([xMm + dx, yMm + dy]).nonZero).toBe(true);
      }
    }
    for (const { left, right, top, bottom } of labelBoxes(drawing)) {
      expect(Math.min(left - x, top - y, x + width - right, y + height - bottom)).toBeGreaterThan(0);
    }
  });

  it('of a flange has a bore', () => {
    expect(fillingOf(jointDrawing(ring(8)).outline.join(''))([0, 0])).toEqual({ nonZero: false, evenOdd: false });
  });

  it('puts each spot where its place is', () => {
    const [first] = jointDrawing(ring(4)).spots;
    expect(first).toMatchObject({ position: 1, xMm: expect.closeTo(0, 9), yMm: expect.closeTo(-200, 9) });
  });

  it('keeps spots apart wherever points lie', () => {
    const point = fc.record({ xMm: fc.integer({ min: -300, max: 300 }), yMm: fc.integer({ min: -300, max: 300 }) });
    fc.assert(
      fc.property(
        fc.uniqueArray(point, { minLength: 1, maxLength: 40, selector: ({ xMm, yMm }) => `${xMm} ${yMm}` }),
        (points) => {
          expect(leastRimGap(jointDrawing({ kind: 'points', points }))).toBeGreaterThan(0);
        },
      ),
    );
  });

  it('still draws points that lie in one place', () => {
    const points = [
      { xMm: 3, yMm: 3 },
      { xMm: 3, yMm: 3 },
    ];
    const { viewBox, spots } = jointDrawing({ kind: 'points', points });
    expect(spots).toHaveLength(2);
    expect(viewBox.width).toBeGreaterThan(0);
  });
});
