import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { places } from './places.ts';
import { starAcross, starOfNeighbours, starOnCircle } from './star.ts';

fc.configureGlobal({ seed: 24 });

const inOrder = (order: readonly number[]) => order.toSorted((a, b) => a - b);
const upTo = (count: number) => Array.from({ length: count }, (_, index) => index + 1);

/** ASME PCC-1, legacy cross pattern, sequential numbering (from memory; 12 also as printed on a flange bolting page). */
const LEGACY_CROSS: readonly (readonly number[])[] = [
  [1, 3, 2, 4],
  [1, 5, 3, 7, 2, 6, 4, 8],
  [1, 7, 4, 10, 2, 8, 5, 11, 3, 9, 6, 12],
  [1, 9, 5, 13, 3, 11, 7, 15, 2, 10, 6, 14, 4, 12, 8, 16],
  [1, 11, 6, 16, 3, 13, 8, 18, 5, 15, 10, 20, 2, 12, 7, 17, 4, 14, 9, 19],
  [1, 13, 7, 19, 4, 16, 10, 22, 2, 14, 8, 20, 5, 17, 11, 23, 3, 15, 9, 21, 6, 18, 12, 24],
  [1, 15, 8, 22, 4, 18, 11, 25, 6, 20, 13, 27, 2, 16, 9, 23, 5, 19, 12, 26, 7, 21, 14, 28, 3, 17, 10, 24],
  [
    1, 17, 9, 25, 5, 21, 13, 29, 3, 19, 11, 27, 7, 23, 15, 31, 2, 18, 10, 26, 6, 22, 14, 30, 4, 20, 12, 28, 8, 24, 16,
    32,
  ],
];

describe('star on a circle', () => {
  it.each(LEGACY_CROSS.map((order) => [order.length, order] as const))(
    'of %i is the legacy cross pattern',
    (count, order) => {
      expect(starOnCircle(count)).toEqual(order);
    },
  );

  // Wheels with five studs: star without lifting the pencil (common practice).
  it.each([
    [3, [1, 2, 3]],
    [5, [1, 3, 5, 2, 4]],
    [7, [1, 4, 7, 3, 6, 2, 5]],
    [9, [1, 5, 9, 4, 8, 3, 7, 2, 6]],
  ])('of %i is the star drawn in one line', (count, order) => {
    expect(starOnCircle(count)).toEqual(order);
  });

  it.each([
    [6, [1, 4, 2, 5, 3, 6]],
    [10, [1, 6, 3, 8, 5, 10, 2, 7, 4, 9]],
  ])('of %i goes across and back', (count, order) => {
    expect(starOnCircle(count)).toEqual(order);
  });

  it('takes every position once, for 2 to 200', () => {
    for (let count = 2; count <= 200; count++) expect(inOrder(starOnCircle(count))).toEqual(upTo(count));
  });

  it('puts the opposite of each even one next', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 100 }), (half) => {
        const order = starOnCircle(2 * half);
        for (let i = 0; i < order.length; i += 2) expect(Math.abs(order[i]! - order[i + 1]!)).toBe(half);
      }),
    );
  });

  it('turns a quarter within each group of a multiple of four', () => {
    fc.assert(
      fc.property(fc.integer({ min: 2, max: 50 }), (quarter) => {
        const order = starOnCircle(4 * quarter);
        for (let i = 0; i < order.length; i += 4) expect(order[i + 2]! - order[i]!).toBe(quarter);
      }),
    );
  });

  it('never pulls to one side by more than one and a half fasteners', () => {
    for (let count = 2; count <= 200; count++) {
      const ring = places({ kind: 'circle', count, diameterMm: 2, firstAngleDeg: 0, direction: 'clockwise' });
      let [x, y] = [0, 0];
      for (const position of starOnCircle(count)) {
        x += ring[position - 1]!.xMm;
        y += ring[position - 1]!.yMm;
        expect(Math.hypot(x, y)).toBeLessThan(1.5);
      }
    }
  });
});

describe('star of neighbours taken as one', () => {
  it('is the plain star where each is by itself, in multiples of four up to twelve groups', () => {
    for (const count of [4, 8, 12]) expect(starOfNeighbours(count, 1)).toEqual(starOnCircle(count));
  });

  // ASME PCC-1, legacy cross pattern for a single tool (from memory; of 48 the grouping was read): first of each group.
  it.each([
    [36, 3, [1, 19, 10, 28, 4, 22, 13, 31, 7, 25, 16, 34]],
    [40, 4, [1, 21, 13, 33, 5, 25, 17, 37, 9, 29]],
    [44, 4, [1, 25, 13, 37, 5, 29, 17, 41, 9, 33, 21]],
    [48, 4, [1, 25, 13, 37, 5, 29, 17, 41, 9, 33, 21, 45]],
  ])('of %i begins its groups of %i as the legacy cross pattern does', (count, neighbours, starts) => {
    const order = starOfNeighbours(count, neighbours);
    expect(order.filter((_, index) => index % neighbours === 0)).toEqual(starts);
  });

  it('takes every position once, neighbours one after another, for 4 to 200', () => {
    for (let count = 4; count <= 200; count++) {
      for (const neighbours of [1, 2, 3, 4]) {
        const order = starOfNeighbours(count, neighbours);
        expect(inOrder(order)).toEqual(upTo(count));
        const torn = order.filter(
          (position, index) => position % neighbours !== 1 % neighbours && order[index - 1] !== position - 1,
        );
        expect(torn).toEqual([]);
      }
    }
  });
});

// Van der Corput's sequence to the base 2, as it is found in fast Fourier transforms: the bits of the count, reversed.
it.each([4, 8, 16, 32])('a star of %i is the reversed count of its bits', (count) => {
  const bits = Math.log2(count);
  const reversed = (index: number) =>
    Number.parseInt(index.toString(2).padStart(bits, '0').split('').toReversed().join(''), 2);
  expect(starOnCircle(count)).toEqual(upTo(count).map((_, index) => reversed(index) + 1));
});

// Pulled in the order of the pencil star, two facing quarters are tight before the others: about n/π in the second harmonic.
it('pulls no two facing quarters before the others, with an odd count above nine', () => {
  for (let count = 11; count < 200; count += 2) {
    const angles = starOnCircle(count).map((position) => (4 * Math.PI * position) / count);
    const sumOf = (part: (angle: number) => number, until: number) =>
      angles.slice(0, until).reduce((sum, angle) => sum + part(angle), 0);
    const ahead = angles.map((_, index) => Math.hypot(sumOf(Math.cos, index + 1), sumOf(Math.sin, index + 1)));
    expect(Math.max(...ahead) / count).toBeLessThan(0.3);
  }
});

describe('star across other layouts', () => {
  it('begins a cover with its corners crosswise', () => {
    const cover = places({ kind: 'rectangle', rows: 4, columns: 5, pitchXMm: 60, pitchYMm: 60, edgeOnly: true });
    expect(starAcross(cover).slice(0, 4)).toEqual([1, 8, 12, 5]);
  });

  it('answers each fastener of a rectangle with the one across from it', () => {
    const size = fc.integer({ min: 2, max: 14 });
    fc.assert(
      fc.property(size, size, fc.boolean(), (rows, columns, edgeOnly) => {
        const all = places({ kind: 'rectangle', rows, columns, pitchXMm: 35, pitchYMm: 52, edgeOnly });
        const order = starAcross(all);
        expect(inOrder(order)).toEqual(upTo(all.length));
        const offCentre = order.map((position) => all[position - 1]!).filter(({ xMm, yMm }) => xMm !== 0 || yMm !== 0);
        for (let i = 0; i < offCentre.length; i += 2) {
          expect(offCentre[i]!.xMm).toBeCloseTo(-offCentre[i + 1]!.xMm, 9);
          expect(offCentre[i]!.yMm).toBeCloseTo(-offCentre[i + 1]!.yMm, 9);
        }
      }),
    );
  });

  it('takes scattered points once each, and has an answer when all lie in one place', () => {
    const point = fc.record({ xMm: fc.double({ min: -500, max: 500, noNaN: true }), yMm: fc.constantFrom(0, 12, 90) });
    fc.assert(
      fc.property(fc.array(point, { minLength: 1, maxLength: 60 }), (points) => {
        expect(inOrder(starAcross(places({ kind: 'points', points })))).toEqual(upTo(points.length));
      }),
    );
    expect(
      inOrder(
        starAcross(
          places({
            kind: 'points',
            points: [
              { xMm: 3, yMm: 3 },
              { xMm: 3, yMm: 3 },
            ],
          }),
        ),
      ),
    ).toEqual([1, 2]);
  });
});
