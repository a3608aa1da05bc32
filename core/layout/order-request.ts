import { z } from 'zod';
import { invalid, ok, type Result } from '../failure/failure.ts';
import { type Layout, MOST_POSITIONS, ORDER_METHODS } from './layout.ts';
import { countPlaces } from './places.ts';
import { byMethod } from './positions-in-order.ts';

const size = z.number().int().min(1).max(MOST_POSITIONS);
const spacing = z.number().positive().max(100_000);

/** What is asked for when only an order is wanted, without a joint. */
export const orderRequestSchema = z.strictObject({
  layout: z.enum(['circle', 'rectangle', 'line']).describe('how the positions lie'),
  count: z.number().int().min(2).max(MOST_POSITIONS).optional().describe('positions of a circle or a line, 2 to 200'),
  rows: size.optional().describe('rows of a rectangle'),
  columns: size.optional().describe('columns of a rectangle'),
  edgeOnly: z
    .boolean()
    .optional()
    .describe(
      'a rectangle with fasteners along its edge only, numbered clockwise from the upper left; else row by row',
    ),
  pitchXMm: spacing.optional().describe('spacing of columns, mm; left out: as that of rows'),
  pitchYMm: spacing.optional().describe('spacing of rows, mm; left out: as that of columns'),
  method: z.enum(ORDER_METHODS).describe('how the order runs'),
});
export type OrderRequest = z.infer<typeof orderRequestSchema>;

/**
 * The tightening order for a circle, a rectangle or a line.
 *
 * @returns positions from 1, each once; refused with the field that is missing or makes fewer than 2 or more than 200
 */
export function orderOf(request: OrderRequest): Result<{ readonly order: readonly number[] }> {
  const layout = layoutOf(request);
  if (!layout.ok) return layout;
  const count = countPlaces(layout.value);
  const field = request.layout === 'rectangle' ? 'rows' : 'count';
  if (count < 2 || count > MOST_POSITIONS) {
    return invalid(field, `${count} position${count === 1 ? '' : 's'}`, `2 to ${MOST_POSITIONS} positions in all`);
  }
  if (request.count !== undefined && request.count !== count) {
    return invalid(
      'count',
      `${request.count} does not fit rows and columns, which make ${count}`,
      `${count}, or left out`,
    );
  }
  return ok({ order: byMethod(layout.value, request.method) });
}

function layoutOf(request: OrderRequest): Result<Layout> {
  const { layout, count, rows, columns } = request;
  if (layout === 'rectangle') {
    if (rows === undefined) return missing('rows', layout);
    if (columns === undefined) return missing('columns', layout);
    const { pitchXMm = request.pitchYMm ?? 1, pitchYMm = pitchXMm, edgeOnly = false } = request;
    return ok({ kind: layout, rows, columns, pitchXMm, pitchYMm, edgeOnly });
  }
  const stray = (['rows', 'columns', 'edgeOnly', 'pitchXMm', 'pitchYMm'] as const).find(
    (name) => request[name] !== undefined,
  );
  if (stray) return invalid(stray, `a ${layout} has no ${stray}`, 'left out, or the layout "rectangle"');
  if (count === undefined) return missing('count', layout);
  return ok(
    layout === 'line'
      ? { kind: layout, count, pitchMm: 1 }
      : { kind: layout, count, diameterMm: 1, firstAngleDeg: 0, direction: 'clockwise' },
  );
}

const missing = (field: string, layout: string) =>
  invalid(field, `a ${layout} needs ${field}`, `a whole number up to ${MOST_POSITIONS}`);
