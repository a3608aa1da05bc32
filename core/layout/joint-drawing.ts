import { labelDirection } from './label-direction.ts';
import type { Layout, Place } from './layout.ts';
import { circle, roundedPlate } from './path.ts';
import { places } from './places.ts';

/** One position in a drawing, mm. */
export interface DrawnSpot {
  readonly position: number;
  readonly xMm: number;
  readonly yMm: number;
  /** Of the fastener's head as drawn; never so large that two overlap. */
  readonly radiusMm: number;
  /** Middle of the position's number where it stands beside the head. */
  readonly labelXMm: number;
  readonly labelYMm: number;
}

/** A joint as seen from the tool side: geometry alone, mm, x to the right, y downwards. */
export interface JointDrawing {
  readonly viewBox: { readonly x: number; readonly y: number; readonly width: number; readonly height: number };
  /** SVG path data of the part; its bore is a hole by either fill rule. */
  readonly outline: readonly string[];
  readonly spots: readonly DrawnSpot[];
  /** Height of the numbers that fits beside the heads. */
  readonly labelSizeMm: number;
}

/** Drawn where there is but one position and nothing to take a measure from. */
const LONE_RADIUS_MM = 10;
/** Heads of few fasteners grow no larger than this share of the joint. */
const LARGEST_SHARE = 0.08;
const LABEL_SHARE = 0.55;

/** Draws any layout: the part, and a spot for each position with room for its number. */
export function jointDrawing(layout: Layout): JointDrawing {
  const all = places(layout);
  const widthMm = spanOf(all.map(({ xMm }) => xMm));
  const heightMm = spanOf(all.map(({ yMm }) => yMm));
  const sizeMm = layout.kind === 'circle' ? layout.diameterMm : Math.max(widthMm, heightMm);
  const radiusMm = spotRadius(layout, all, sizeMm);
  const labelSizeMm = LABEL_SHARE * radiusMm;
  const part = layout.kind === 'circle' ? ringPart(sizeMm, radiusMm) : platePart(layout, widthMm, heightMm, radiusMm);
  return {
    ...part,
    spots: all.map((place) => ({ ...place, radiusMm, ...labelAt(layout, all, place, radiusMm, labelSizeMm) })),
    labelSizeMm,
  };
}

const spanOf = (values: readonly number[]): number => Math.max(...values) - Math.min(...values);

/** Where numbers stand between neighbours the heads are smaller. */
function spotRadius(layout: Layout, all: readonly Place[], sizeMm: number): number {
  const gapMm = nearestGap(all);
  if (!Number.isFinite(gapMm)) return sizeMm > 0 ? LARGEST_SHARE * sizeMm : LONE_RADIUS_MM;
  const hasNumbersBetween = layout.kind === 'points' || (layout.kind === 'rectangle' && !layout.edgeOnly);
  return Math.min(gapMm * (hasNumbersBetween ? 0.34 : 0.4), sizeMm * LARGEST_SHARE);
}

/** Smallest distance between two places that are not the same. */
function nearestGap(all: readonly Place[]): number {
  let gapMm = Number.POSITIVE_INFINITY;
  for (const [index, a] of all.entries()) {
    for (const b of all.slice(0, index)) {
      const distanceMm = Math.hypot(a.xMm - b.xMm, a.yMm - b.yMm);
      if (distanceMm > 0) gapMm = Math.min(gapMm, distanceMm);
    }
  }
  return gapMm;
}

function labelAt(layout: Layout, all: readonly Place[], place: Place, radiusMm: number, labelSizeMm: number) {
  const [x, y] = labelDirection(layout, all, place);
  // numbers are wider than high, so they stand farther off sideways
  const offMm = radiusMm + labelSizeMm * (0.95 + 0.45 * Math.abs(x));
  return { labelXMm: place.xMm + x * offMm, labelYMm: place.yMm + y * offMm };
}

type Part = Pick<JointDrawing, 'viewBox' | 'outline'>;

/** Flange ring; the numbers stand in its bore. */
function ringPart(diameterMm: number, radiusMm: number): Part {
  const outerMm = diameterMm / 2 + 1.8 * radiusMm;
  const boreMm = diameterMm / 2 - 1.2 * radiusMm;
  const outline = circle(0, 0, outerMm) + circle(0, 0, boreMm, 'counter-clockwise');
  return { viewBox: boxAbout(2 * outerMm, 2 * outerMm, radiusMm), outline: [outline] };
}

/** Plate around everything, with its numbers; a line becomes a bar with round ends. */
function platePart(layout: Layout, widthMm: number, heightMm: number, radiusMm: number): Part {
  const rimMm = 2 * 2.6 * radiusMm;
  const corner = layout.kind === 'line' ? Number.POSITIVE_INFINITY : 1.5 * radiusMm;
  const outline = roundedPlate(widthMm + rimMm, heightMm + rimMm, corner);
  return { viewBox: boxAbout(widthMm + rimMm, heightMm + rimMm, radiusMm), outline: [outline] };
}

/** A little air, so that the line of the outline is not cut. */
function boxAbout(widthMm: number, heightMm: number, radiusMm: number): JointDrawing['viewBox'] {
  const airMm = 0.4 * radiusMm;
  const [width, height] = [widthMm + 2 * airMm, heightMm + 2 * airMm];
  return { x: -width / 2, y: -height / 2, width, height };
}
