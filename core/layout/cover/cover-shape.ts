import { invalid, ok, type Result } from '../../failure/failure.ts';
import type { PlateModel } from '../interaction/model-schema.ts';
import type { Place } from '../layout.ts';

export type Pair = readonly [xMm: number, yMm: number];

/** A cover and its bed about the middle of its bolts. Half sides, mm; of a round cover both are its radius. */
export interface CoverShape {
  readonly isRound: boolean;
  readonly half: Pair;
  readonly bedOuter: Pair;
  /** What the bed leaves free in the middle; nothing where it reaches there. */
  readonly bedInner?: Pair;
}

/**
 * The shape of a cover whose edge is told: round where the bolts stand on a circle, else a rectangle about them.
 *
 * @returns undefined without an edge; refused with the dimension that leaves no bed, or counts it from an edge not told
 */
export function coverShape(model: PlateModel, spots: readonly Place[]): Result<CoverShape | undefined> {
  const { edgeMm, bedFromEdgeMm = 0, bedWidthMm, layout } = model;
  if (edgeMm === undefined) return withoutEdge(model);
  const half = halfSides(model, spots, edgeMm);
  if (bedFromEdgeMm >= Math.min(...half)) {
    return invalid('model.bedFromEdgeMm', 'No bed is left under the cover.', `less than ${Math.min(...half)} mm`);
  }
  const bedOuter = inFrom(half, bedFromEdgeMm);
  const bedInner = inFrom(bedOuter, bedWidthMm ?? Infinity);
  const shape = { isRound: layout.kind === 'circle', half, bedOuter };
  return ok(Math.min(...bedInner) > 0 ? { ...shape, bedInner } : shape);
}

function withoutEdge({ bedFromEdgeMm, bedWidthMm }: PlateModel): Result<undefined> {
  if (bedFromEdgeMm === undefined && bedWidthMm === undefined) return ok(undefined);
  const field = bedFromEdgeMm === undefined ? 'bedWidthMm' : 'bedFromEdgeMm';
  return invalid(
    `model.${field}`,
    'The bed is counted from the free edge, which is not told.',
    'with edgeMm, or left out',
  );
}

function halfSides({ layout }: PlateModel, spots: readonly Place[], edgeMm: number): Pair {
  if (layout.kind === 'circle') return [layout.diameterMm / 2 + edgeMm, layout.diameterMm / 2 + edgeMm];
  const reach = (along: (spot: Place) => number) => Math.max(...spots.map((spot) => Math.abs(along(spot)))) + edgeMm;
  return [reach(({ xMm }) => xMm), reach(({ yMm }) => yMm)];
}

/** What is left of half sides a way in from the edge. */
const inFrom = ([x, y]: Pair, wayMm: number): Pair => [x - wayMm, y - wayMm];
