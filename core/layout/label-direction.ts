import type { Layout, Place } from './layout.ts';

type Direction = readonly [x: number, y: number];

const DIAGONAL = Math.SQRT1_2;
const DOWN: Direction = [0, 1];
const RIGHT_DOWN: Direction = [DIAGONAL, DIAGONAL];
const ROUND: readonly Direction[] = [
  RIGHT_DOWN,
  DOWN,
  [1, 0],
  [0, -1],
  [-1, 0],
  [-DIAGONAL, DIAGONAL],
  [DIAGONAL, -DIAGONAL],
  [-DIAGONAL, -DIAGONAL],
];

/** Which way the number of a place stands: where the layout leaves room for it. */
export function labelDirection(layout: Layout, all: readonly Place[], place: Place): Direction {
  switch (layout.kind) {
    case 'circle':
      return inwards(place);
    case 'line':
      return DOWN;
    case 'rectangle':
      return layout.edgeOnly ? outOfEdge(all, place) : RIGHT_DOWN;
    case 'points':
      return freest(all, place);
  }
}

function inwards({ xMm, yMm }: Place): Direction {
  const length = Math.hypot(xMm, yMm);
  return [-xMm / length, -yMm / length];
}

/** Up from the top row, down from the bottom row, sideways from what lies between. */
function outOfEdge(all: readonly Place[], { xMm, yMm }: Place): Direction {
  const ys = all.map((place) => place.yMm);
  if (yMm === Math.min(...ys)) return [0, -1];
  if (yMm === Math.max(...ys)) return DOWN;
  return [xMm < 0 ? -1 : 1, 0];
}

/** The direction in which the next fastener is farthest; the first of equals. */
function freest(all: readonly Place[], place: Place): Direction {
  const others = all.filter(({ position }) => position !== place.position);
  const gapMm = Math.min(...others.map(({ xMm, yMm }) => Math.hypot(xMm - place.xMm, yMm - place.yMm)));
  if (!Number.isFinite(gapMm)) return RIGHT_DOWN;
  const room = ([x, y]: Direction): number =>
    Math.min(
      ...others.map(({ xMm, yMm }) => Math.hypot(xMm - place.xMm - (x * gapMm) / 2, yMm - place.yMm - (y * gapMm) / 2)),
    );
  return ROUND.reduce((best, direction) => (room(direction) > room(best) * (1 + 1e-9) ? direction : best));
}
