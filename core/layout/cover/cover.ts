import { invalid, ok, type Result } from '../../failure/failure.ts';
import type { PlateModel } from '../interaction/model-schema.ts';
import { beyondReckoning } from '../interaction/modelled.ts';
import { plateClosing, plateFigures } from '../interaction/plate-on-bed.ts';
import { circulant } from '../interaction/ring-model.ts';
import { matrixOf, type SquareMatrix } from '../interaction/square-matrix.ts';
import type { Place } from '../layout.ts';
import { discClosing } from './free-disc.ts';
import { type Pair, rectangleClosing } from './free-rectangle.ts';

/** Half of a cover in characteristic lengths up to which the terms of its field suffice. */
const MOST_LENGTHS = 16;

/**
 * How far a cover closes at each bolt for a unit of force at each, mm/N: with the free edge that is told, round where the
 * bolts stand on a circle and else a rectangle about them; endless where no edge is told.
 *
 * @returns refused with the dimension that leaves no cover or no bed
 */
export function coverClosing(model: PlateModel, spots: readonly Place[]): Result<SquareMatrix> {
  // a joint asks for it again at every pull; the dimensions tell the places too
  const told = JSON.stringify(model);
  const known = workedOut.get(told);
  if (known) return known;
  const closing = closingOf(model, spots);
  if (workedOut.size >= KEPT) workedOut.clear();
  workedOut.set(told, closing);
  return closing;
}

const workedOut = new Map<string, Result<SquareMatrix>>();
const KEPT = 16;

function closingOf(model: PlateModel, spots: readonly Place[]): Result<SquareMatrix> {
  const { edgeMm, bedFromEdgeMm, bedWidthMm } = model;
  if (edgeMm === undefined) {
    if (bedFromEdgeMm !== undefined) return withoutEdge('bedFromEdgeMm');
    return bedWidthMm === undefined ? ok(endless(model, spots)) : withoutEdge('bedWidthMm');
  }
  const half = halfSides(model, spots, edgeMm);
  const lengths = Math.max(...half) / plateFigures(model).lengthMm;
  if (lengths > MOST_LENGTHS) {
    const message = `The cover is so thin or so firmly bedded that it measures ${(2 * lengths).toFixed(0)} of its characteristic lengths.`;
    return invalid('model.heightMm', message, `thick enough for at most ${2 * MOST_LENGTHS} of them`);
  }
  if (bedFromEdgeMm !== undefined && bedFromEdgeMm >= Math.min(...half)) {
    return invalid('model.bedFromEdgeMm', 'No bed is left under the cover.', `less than ${Math.min(...half)} mm`);
  }
  const closing = model.layout.kind === 'circle' ? round(model, half[0], spots) : straight(model, half, spots);
  return closing ? ok(closing) : beyondReckoning();
}

const withoutEdge = (field: 'bedFromEdgeMm' | 'bedWidthMm') =>
  invalid(`model.${field}`, 'The bed is counted from the free edge, which is not told.', 'with edgeMm, or left out');

const endless = (model: PlateModel, spots: readonly Place[]): SquareMatrix => {
  const closing = plateClosing(model);
  return matrixOf(spots.length, (i, j) =>
    closing(Math.hypot(spots[i]!.xMm - spots[j]!.xMm, spots[i]!.yMm - spots[j]!.yMm)),
  );
};

/** Half of what the cover measures along both axes, mm; its radius twice where it is round. */
function halfSides({ layout }: PlateModel, spots: readonly Place[], edgeMm: number): Pair {
  if (layout.kind === 'circle') return [layout.diameterMm / 2 + edgeMm, layout.diameterMm / 2 + edgeMm];
  const reach = (along: (spot: Place) => number) => Math.max(...spots.map((spot) => Math.abs(along(spot)))) + edgeMm;
  return [reach(({ xMm }) => xMm), reach(({ yMm }) => yMm)];
}

/** What is left of half sides a way in from the edge. */
const inFrom = ([x, y]: Pair, wayMm: number): Pair => [x - wayMm, y - wayMm];

function straight(model: PlateModel, half: Pair, spots: readonly Place[]): SquareMatrix | undefined {
  const bedOuter = inFrom(half, model.bedFromEdgeMm ?? 0);
  const inner = model.bedWidthMm === undefined ? undefined : inFrom(bedOuter, model.bedWidthMm);
  const bedInner = inner && Math.min(...inner) > 0 ? inner : undefined;
  return rectangleClosing({ ...model, half, bedOuter, bedInner }, spots);
}

function round(model: PlateModel, radiusMm: number, spots: readonly Place[]): SquareMatrix | undefined {
  const bedOuterMm = radiusMm - (model.bedFromEdgeMm ?? 0);
  const bedInnerMm = model.bedWidthMm === undefined ? 0 : Math.max(0, bedOuterMm - model.bedWidthMm);
  const { edgeMm = 0 } = model;
  const closing = discClosing({ ...model, radiusMm, bedOuterMm, bedInnerMm }, radiusMm - edgeMm, spots.length);
  return closing && circulant(closing);
}
