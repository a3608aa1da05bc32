import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { middleOut } from './middle-out.ts';
import { places } from './places.ts';

fc.configureGlobal({ seed: 24 });

const rectangle = (rows: number, columns: number, edgeOnly = false) =>
  places({ kind: 'rectangle', rows, columns, pitchXMm: 90, pitchYMm: 100, edgeOnly });

describe('order from the middle', () => {
  it('begins a ten-bolt head in the middle and goes outwards crosswise', () => {
    // 2 x 5 head, numbered row by row: centre outwards, sides alternating (common practice)
    expect(middleOut(rectangle(2, 5))).toEqual([3, 8, 2, 9, 4, 7, 1, 10, 5, 6]);
  });

  it('begins a line at its middle', () => {
    expect(middleOut(places({ kind: 'line', count: 5, pitchMm: 40 }))).toEqual([3, 2, 4, 1, 5]);
    expect(middleOut(places({ kind: 'line', count: 4, pitchMm: 40 }))).toEqual([2, 3, 1, 4]);
  });

  it('takes each position of a rectangle once, never nearer to the centre than the one before', () => {
    const size = fc.integer({ min: 1, max: 14 });
    fc.assert(
      fc.property(size, size, fc.boolean(), (rows, columns, edgeOnly) => {
        const all = rectangle(rows, columns, edgeOnly);
        const order = middleOut(all);
        expect(new Set(order).size).toBe(all.length);
        const radii = order.map((position) => Math.hypot(all[position - 1]!.xMm, all[position - 1]!.yMm));
        for (let i = 1; i < radii.length; i++) expect(radii[i]! - radii[i - 1]!).toBeGreaterThan(-1e-6);
      }),
    );
  });

  it('goes across from each position of an even rectangle', () => {
    const all = rectangle(4, 6, true);
    const order = middleOut(all);
    for (let i = 0; i < order.length; i += 2) {
      const [a, b] = [all[order[i]! - 1]!, all[order[i + 1]! - 1]!];
      expect(a.xMm + b.xMm).toBeCloseTo(0, 9);
      expect(a.yMm + b.yMm).toBeCloseTo(0, 9);
    }
  });

  it('works without reflections', () => {
    const points = [
      { xMm: 0, yMm: 0 },
      { xMm: 10, yMm: 0 },
      { xMm: 0, yMm: 50 },
    ];
    expect(middleOut(places({ kind: 'points', points }))).toEqual([1, 2, 3]);
  });
});
