import { invalid, ok, type Result } from '../failure/failure.ts';
import type { Layout, Order, OrderMethod } from './layout.ts';
import { middleOut } from './middle-out.ts';
import { countPlaces, places } from './places.ts';
import { starAcross, starOnCircle } from './star.ts';

/**
 * The positions of a layout in the order of a round, each exactly once.
 *
 * `circular` goes once through the position numbers: round a circle, clockwise round the edge of a rectangle,
 * row by row through a grid, along a line. On a circle `from-the-middle` has no meaning and gives the star.
 *
 * @returns refused with field `positions` or `positions[i]` where an own order is not a permutation
 */
export function positionsInOrder(layout: Layout, order: Order): Result<readonly number[]> {
  if (order.method === 'own') return permutation(order.positions, countPlaces(layout));
  return ok(byMethod(layout, order.method));
}

/** @see positionsInOrder; these methods fit every layout. */
export function byMethod(layout: Layout, method: OrderMethod): readonly number[] {
  switch (method) {
    case 'circular':
      return upTo(countPlaces(layout));
    case 'star':
      return layout.kind === 'circle' ? starOnCircle(layout.count) : starAcross(places(layout));
    case 'from-the-middle':
      return layout.kind === 'circle' ? starOnCircle(layout.count) : middleOut(places(layout));
  }
}

const upTo = (count: number): readonly number[] => Array.from({ length: count }, (_, index) => index + 1);

function permutation(positions: readonly number[], count: number): Result<readonly number[]> {
  const expected = `each of the positions 1 to ${count} once`;
  const seen = new Set<number>();
  for (const [index, position] of positions.entries()) {
    const isPlace = Number.isInteger(position) && position >= 1 && position <= count;
    if (!isPlace) return invalid(`positions[${index}]`, `the layout has no position ${position}`, expected);
    if (seen.has(position)) return invalid(`positions[${index}]`, `position ${position} comes twice`, expected);
    seen.add(position);
  }
  const missing = upTo(count).find((position) => !seen.has(position));
  if (missing !== undefined) return invalid('positions', `position ${missing} is missing`, expected);
  return ok(positions);
}
