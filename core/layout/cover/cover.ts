import { invalid, ok, type Result } from '../../failure/failure.ts';
import type { PlateModel } from '../interaction/model-schema.ts';
import { beyondReckoning } from '../interaction/modelled.ts';
import { plateClosing, plateFigures } from '../interaction/plate-on-bed.ts';
import { circulant } from '../interaction/ring-model.ts';
import { matrixOf, type SquareMatrix } from '../interaction/square-matrix.ts';
import type { Place } from '../layout.ts';
import { type CoverShape, coverShape } from './cover-shape.ts';
import { discClosing } from './free-disc.ts';
import { rectangleClosing } from './free-rectangle.ts';

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
  const shape = coverShape(model, spots);
  if (!shape.ok) return shape;
  if (!shape.value) return ok(endless(model, spots));
  const lengths = Math.max(...shape.value.half) / plateFigures(model).lengthMm;
  if (lengths > MOST_LENGTHS) {
    const message = `The cover is so thin or so firmly bedded that it measures ${(2 * lengths).toFixed(0)} of its characteristic lengths.`;
    return invalid('model.heightMm', message, `thick enough for at most ${2 * MOST_LENGTHS} of them`);
  }
  const closing = withEdge(model, shape.value, spots);
  return closing ? ok(closing) : beyondReckoning();
}

function withEdge(model: PlateModel, { isRound, ...shape }: CoverShape, spots: readonly Place[]) {
  if (!isRound) return rectangleClosing({ ...model, ...shape }, spots);
  const { half, bedOuter, bedInner } = shape;
  const disc = { ...model, radiusMm: half[0], bedOuterMm: bedOuter[0], bedInnerMm: bedInner?.[0] };
  const closing = discClosing(disc, half[0] - (model.edgeMm ?? 0), spots.length);
  return closing && circulant(closing);
}

const endless = (model: PlateModel, spots: readonly Place[]): SquareMatrix => {
  const closing = plateClosing(model);
  return matrixOf(spots.length, (i, j) =>
    closing(Math.hypot(spots[i]!.xMm - spots[j]!.xMm, spots[i]!.yMm - spots[j]!.yMm)),
  );
};
