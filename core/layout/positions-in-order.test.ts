import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Layout, ORDER_METHODS } from './layout.ts';
import { countPlaces } from './places.ts';
import { positionsInOrder } from './positions-in-order.ts';

fc.configureGlobal({ seed: 24 });

const ring: Layout = { kind: 'circle', count: 4, diameterMm: 100, firstAngleDeg: 0, direction: 'clockwise' };
const own = (...positions: readonly number[]) => positionsInOrder(ring, { method: 'own', positions: [...positions] });

describe('positions in order', () => {
  it('takes the user’s own order as it stands', () => {
    expect(own(4, 2, 3, 1)).toEqual({ ok: true, value: [4, 2, 3, 1] });
  });

  it.each([
    ['a repeat', [1, 2, 2, 4], 'positions[2]', 'position 2 comes twice'],
    ['a gap', [1, 2, 4], 'positions', 'position 3 is missing'],
    ['a position beyond the layout', [1, 2, 5, 4], 'positions[2]', 'the layout has no position 5'],
  ])('refuses %s in an own order', (_, positions, field, message) => {
    expect(own(...positions)).toMatchObject({ ok: false, failure: { kind: 'invalid', field, message } });
  });

  it('gives the star for a circle without a middle', () => {
    expect(positionsInOrder(ring, { method: 'from-the-middle' })).toEqual({ ok: true, value: [1, 3, 2, 4] });
  });

  it('takes each position of any layout once by any method', () => {
    const count = fc.integer({ min: 1, max: 60 });
    const layout = fc.oneof<fc.Arbitrary<Layout>[]>(
      count.map((n) => ({ ...ring, count: n })),
      count.map((n) => ({ kind: 'line', count: n, pitchMm: 12.7 })),
      fc.record({
        kind: fc.constant('rectangle'),
        rows: fc.integer({ min: 1, max: 8 }),
        columns: fc.integer({ min: 1, max: 8 }),
        pitchXMm: fc.constantFrom(10, 33.3),
        pitchYMm: fc.constantFrom(10, 70.1),
        edgeOnly: fc.boolean(),
      }),
    );
    fc.assert(
      fc.property(layout, fc.constantFrom(...ORDER_METHODS), (layout, method) => {
        const order = positionsInOrder(layout, { method });
        const positions = order.ok ? order.value.toSorted((a, b) => a - b) : [];
        expect(positions).toEqual(Array.from({ length: countPlaces(layout) }, (_, index) => index + 1));
      }),
    );
  });
});
