import { aboutMean } from '../about-centre.ts';
import type { Place } from '../layout.ts';

/**
 * Groups for several wrenches at once, balanced about the centre: each next position of the order that is still open
 * takes along, for each further wrench, the open position nearest to where it comes when the joint is turned by an
 * equal share of a full turn.
 *
 * @param order    positions in the order of one wrench
 * @param wrenches 2 to 4; the last group may have fewer positions
 * @source simultaneous tightening on opposite sides (common practice); the way of choosing is ours
 */
export function groupedOrder(
  places: readonly Place[],
  order: readonly number[],
  wrenches: number,
): readonly (readonly number[])[] {
  const spots = aboutMean(places);
  const at = (position: number) => spots[position - 1]!;
  const open = new Set(order);
  const groups: number[][] = [];
  for (const seed of order) {
    if (!open.delete(seed)) continue;
    const group = [seed];
    const [x, y] = at(seed);
    for (let k = 1; k < wrenches && open.size > 0; k++) {
      const turn = (2 * Math.PI * k) / wrenches;
      const [toX, toY] = [x * Math.cos(turn) - y * Math.sin(turn), x * Math.sin(turn) + y * Math.cos(turn)];
      const next = nearest(open, at, toX, toY);
      open.delete(next);
      group.push(next);
    }
    groups.push(group);
  }
  return groups;
}

/** Nearer by less than this of the distance is as near; the lower number then goes first. */
const GRAIN = 1e-9;

function nearest(
  open: ReadonlySet<number>,
  at: (position: number) => readonly [number, number],
  toX: number,
  toY: number,
): number {
  const grain = GRAIN * (1 + Math.hypot(toX, toY));
  let best = -1;
  let bestGap = Number.POSITIVE_INFINITY;
  for (const position of open) {
    const [x, y] = at(position);
    const gap = Math.hypot(x - toX, y - toY);
    if (gap < bestGap - grain || (gap < bestGap + grain && position < best)) [best, bestGap] = [position, gap];
  }
  return best;
}
