import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { layoutSchema } from './layout.ts';
import { countPlaces, places } from './places.ts';

fc.configureGlobal({ seed: 24 });

const circle = (count: number, more: { firstAngleDeg?: number; direction?: 'clockwise' | 'counter-clockwise' } = {}) =>
  layoutSchema.parse({ kind: 'circle', count, diameterMm: 200, ...more });

describe('places', () => {
  it('begins a circle at twelve o’clock and goes round clockwise', () => {
    const [top, right, bottom, left] = places(circle(4));
    expect(top!.xMm).toBeCloseTo(0, 9);
    expect(top!.yMm).toBeCloseTo(-100, 9);
    expect(right!.xMm).toBeCloseTo(100, 9);
    expect(bottom!.yMm).toBeCloseTo(100, 9);
    expect(left!.xMm).toBeCloseTo(-100, 9);
  });

  it('turns the first position and the sense as told', () => {
    const [first, second] = places(circle(4, { firstAngleDeg: 90, direction: 'counter-clockwise' }));
    expect(first!.xMm).toBeCloseTo(100, 9);
    expect(second!.yMm).toBeCloseTo(-100, 9);
  });

  it('numbers a grid row by row', () => {
    const grid = places({ kind: 'rectangle', rows: 2, columns: 3, pitchXMm: 40, pitchYMm: 30, edgeOnly: false });
    expect(grid.map(({ xMm, yMm }) => [xMm, yMm])).toEqual([
      [-40, -15],
      [0, -15],
      [40, -15],
      [-40, 15],
      [0, 15],
      [40, 15],
    ]);
  });

  it('numbers an edge clockwise from the upper left', () => {
    const edge = places({ kind: 'rectangle', rows: 3, columns: 3, pitchXMm: 10, pitchYMm: 10, edgeOnly: true });
    expect(edge.map(({ xMm, yMm }) => [xMm, yMm])).toEqual([
      [-10, -10],
      [0, -10],
      [10, -10],
      [10, 0],
      [10, 10],
      [0, 10],
      [-10, 10],
      [-10, 0],
    ]);
  });

  it('staggers every second row and closes up where a place is missing', () => {
    const grid = { kind: 'rectangle', rows: 2, columns: 2, pitchXMm: 40, pitchYMm: 30, edgeOnly: false } as const;
    const staggered = { ...grid, staggered: true };
    expect(places(staggered).map(({ xMm }) => xMm)).toEqual([-30, 10, -10, 30]);
    expect(places({ ...grid, missing: [1, 2] })).toEqual([
      { position: 1, xMm: -20, yMm: 0 },
      { position: 2, xMm: 20, yMm: 0 },
    ]);
    expect(countPlaces({ ...grid, missing: [3] })).toBe(3);
  });

  it('takes a single row for an edge of its own', () => {
    const row = { kind: 'rectangle', rows: 1, columns: 5, pitchXMm: 10, pitchYMm: 10, edgeOnly: true } as const;
    expect(countPlaces(row)).toBe(5);
    expect(places(row)).toHaveLength(5);
  });

  it('moves free points so that the origin lies in their middle', () => {
    const points = [
      { xMm: 100, yMm: 20 },
      { xMm: 140, yMm: 80 },
    ];
    expect(places({ kind: 'points', points }).map(({ xMm, yMm }) => [xMm, yMm])).toEqual([
      [-20, -30],
      [20, 30],
    ]);
  });

  it('gives as many places as it counts, no two of a grid in one spot', () => {
    const size = fc.integer({ min: 1, max: 14 });
    fc.assert(
      fc.property(size, size, fc.boolean(), (rows, columns, edgeOnly) => {
        const layout = { kind: 'rectangle', rows, columns, pitchXMm: 7, pitchYMm: 11, edgeOnly } as const;
        const all = places(layout);
        expect(all).toHaveLength(countPlaces(layout));
        expect(new Set(all.map(({ xMm, yMm }) => `${xMm} ${yMm}`)).size).toBe(all.length);
      }),
    );
  });
});

describe('layout schema', () => {
  const rectangle = { kind: 'rectangle', pitchXMm: 10, pitchYMm: 10 };

  it('refuses a rectangle with more than 200 positions, naming rows', () => {
    const read = layoutSchema.safeParse({ ...rectangle, rows: 20, columns: 11 });
    expect(read.error?.issues[0]?.path).toEqual(['rows']);
  });

  it('counts only the edge where only the edge has fasteners', () => {
    expect(layoutSchema.safeParse({ ...rectangle, rows: 51, columns: 51, edgeOnly: true }).success).toBe(true);
    expect(layoutSchema.safeParse({ ...rectangle, rows: 51, columns: 52, edgeOnly: true }).success).toBe(false);
  });
});
