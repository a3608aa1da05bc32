import type { Place } from '../layout.ts';

export const STIFFEST_PARTS = ['middle', 'middle-column', 'middle-row', 'left', 'right', 'top', 'bottom'] as const;
/** The part of a connection that is held most rigidly. */
export type StiffestPart = (typeof STIFFEST_PARTS)[number];

/** How far a place is from the stiffest part, and how far from the middle along it. */
type FromStiffest = (place: Place, span: Span) => readonly [awayMm: number, alongMm: number];

interface Span {
  readonly leftMm: number;
  readonly rightMm: number;
  readonly topMm: number;
  readonly bottomMm: number;
}

const FROM: Readonly<Record<StiffestPart, FromStiffest>> = {
  middle: ({ xMm, yMm }) => [Math.hypot(xMm, yMm), 0],
  'middle-column': ({ xMm, yMm }) => [Math.abs(xMm), Math.abs(yMm)],
  'middle-row': ({ xMm, yMm }) => [Math.abs(yMm), Math.abs(xMm)],
  left: ({ xMm, yMm }, { leftMm }) => [xMm - leftMm, Math.abs(yMm)],
  right: ({ xMm, yMm }, { rightMm }) => [rightMm - xMm, Math.abs(yMm)],
  top: ({ xMm, yMm }, { topMm }) => [yMm - topMm, Math.abs(xMm)],
  bottom: ({ xMm, yMm }, { bottomMm }) => [bottomMm - yMm, Math.abs(xMm)],
};

/** Distances that differ by less than so much of the span are the same. */
const GRAIN = 1e-9;

/**
 * From the stiffest part to the free edges: row after row away from it, each row from its middle outwards.
 *
 * @source RCSC specification, installation: from the most rigid part of the connection to the free edges (read in an
 *         answer of the AISC); the order within a row is ours
 */
export function stiffestFirst(places: readonly Place[], stiffest: StiffestPart): readonly number[] {
  const xs = places.map(({ xMm }) => xMm);
  const ys = places.map(({ yMm }) => yMm);
  const span = {
    leftMm: Math.min(...xs),
    rightMm: Math.max(...xs),
    topMm: Math.min(...ys),
    bottomMm: Math.max(...ys),
  };
  const grainMm = GRAIN * Math.max(1e-6, span.rightMm - span.leftMm, span.bottomMm - span.topMm);
  const told = places.map((place) => {
    const [awayMm, alongMm] = FROM[stiffest](place, span);
    return { position: place.position, away: Math.round(awayMm / grainMm), along: Math.round(alongMm / grainMm) };
  });
  return told
    .toSorted((a, b) => a.away - b.away || a.along - b.along || a.position - b.position)
    .map(({ position }) => position);
}
