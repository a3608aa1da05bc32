import { aboutCentre } from './about-centre.ts';
import type { Place } from './layout.ts';

/**
 * Order from the middle outwards: the nearest to the centre, the lowest number in a tie, then its point reflection
 * through the centre where there is one, and so on.
 *
 * @source covers, cylinder heads, splices: from the centre, sides alternating (common practice)
 */
export function middleOut(places: readonly Place[]): readonly number[] {
  const { fromCentre, isReflection } = aboutCentre(places);
  const outwards = places.map((_, index) => index).toSorted((a, b) => fromCentre(a) - fromCentre(b) || a - b);
  const open = new Set(outwards);
  const order: number[] = [];
  const take = (index: number): void => {
    order.push(index + 1);
    open.delete(index);
  };
  for (const index of outwards) {
    if (!open.has(index)) continue;
    take(index);
    const reflection = [...open].find((other) => isReflection(index, other));
    if (reflection !== undefined) take(reflection);
  }
  return order;
}
