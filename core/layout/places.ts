import { countInRectangle, type Layout, type Place } from './layout.ts';

type Circle = Extract<Layout, { kind: 'circle' }>;
type Rectangle = Extract<Layout, { kind: 'rectangle' }>;

/** How many positions a layout has. */
export function countPlaces(layout: Layout): number {
  switch (layout.kind) {
    case 'circle':
    case 'line':
      return layout.count;
    case 'rectangle':
      return countInRectangle(layout.rows, layout.columns, layout.edgeOnly) - new Set(layout.missing).size;
    case 'points':
      return layout.points.length;
  }
}

/**
 * Where each position lies, in the order of the position numbers.
 *
 * @returns mm, seen from the tool side, x to the right, y downwards, origin in the middle of what the positions span
 */
export function places(layout: Layout): readonly Place[] {
  switch (layout.kind) {
    case 'circle':
      return numbered(onCircle(layout));
    case 'rectangle':
      return numbered(inRectangle(layout));
    case 'line':
      return numbered(spaced(layout.count, layout.pitchMm).map((xMm) => ({ xMm, yMm: 0 })));
    case 'points':
      return numbered(centred(layout.points));
  }
}

/** Places nearer to each other than this are one. */
const ONE_POINT_MM = 1e-6;

/** The first two positions that stand in one point, the lower number first; undefined where each has its own. */
export function samePlace(all: readonly Place[]): readonly [number, number] | undefined {
  for (const b of all) {
    for (const a of all.slice(0, b.position - 1)) {
      if (Math.hypot(a.xMm - b.xMm, a.yMm - b.yMm) < ONE_POINT_MM) return [a.position, b.position];
    }
  }
  return undefined;
}

type Spot = Omit<Place, 'position'>;

const numbered = (spots: readonly Spot[]): readonly Place[] =>
  spots.map(({ xMm, yMm }, index) => ({ position: index + 1, xMm, yMm }));

function onCircle({ count, diameterMm, firstAngleDeg, direction }: Circle): readonly Spot[] {
  const sense = direction === 'clockwise' ? 1 : -1;
  return Array.from({ length: count }, (_, index) => {
    const angle = ((firstAngleDeg + (sense * 360 * index) / count) * Math.PI) / 180;
    return { xMm: (Math.sin(angle) * diameterMm) / 2, yMm: (-Math.cos(angle) * diameterMm) / 2 };
  });
}

/** A single row or column has no inside, so its edge is all of it. */
const isRing = ({ rows, columns, edgeOnly }: Rectangle): boolean => edgeOnly && rows > 1 && columns > 1;

const spaced = (count: number, pitchMm: number): readonly number[] =>
  Array.from({ length: count }, (_, index) => (index - (count - 1) / 2) * pitchMm);

function inRectangle(layout: Rectangle): readonly Spot[] {
  const all = isRing(layout) ? onEdge(layout) : inGrid(layout);
  const { missing = [], staggered = false } = layout;
  if (missing.length === 0 && !staggered) return all;
  return centred(all.filter((_, index) => !missing.includes(index + 1)));
}

function inGrid({ rows, columns, pitchXMm, pitchYMm, staggered }: Rectangle): readonly Spot[] {
  return spaced(rows, pitchYMm).flatMap((yMm, row) => {
    const shiftMm = staggered && row % 2 === 1 ? pitchXMm / 2 : 0;
    return spaced(columns, pitchXMm).map((xMm) => ({ xMm: xMm + shiftMm, yMm }));
  });
}

/** Clockwise from the upper left; each side gives its first corner and leaves its last to the next side. */
function onEdge({ rows, columns, pitchXMm, pitchYMm }: Rectangle): readonly Spot[] {
  const xs = spaced(columns, pitchXMm);
  const ys = spaced(rows, pitchYMm);
  const [left, right] = [xs[0]!, xs.at(-1)!];
  const [top, bottom] = [ys[0]!, ys.at(-1)!];
  return [
    ...xs.slice(0, -1).map((xMm) => ({ xMm, yMm: top })),
    ...ys.slice(0, -1).map((yMm) => ({ xMm: right, yMm })),
    ...xs
      .slice(1)
      .map((xMm) => ({ xMm, yMm: bottom }))
      .toReversed(),
    ...ys
      .slice(1)
      .map((yMm) => ({ xMm: left, yMm }))
      .toReversed(),
  ];
}

const middle = (values: readonly number[]): number => (Math.min(...values) + Math.max(...values)) / 2;

function centred(points: readonly Spot[]): readonly Spot[] {
  const middleXMm = middle(points.map(({ xMm }) => xMm));
  const middleYMm = middle(points.map(({ yMm }) => yMm));
  return points.map(({ xMm, yMm }) => ({ xMm: xMm - middleXMm, yMm: yMm - middleYMm }));
}
