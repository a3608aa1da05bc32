import { z } from 'zod';

/** As many positions as a layout may have. */
export const MOST_POSITIONS = 200;

const count = z.number().int().min(1).max(MOST_POSITIONS);
const FARTHEST_MM = 100_000;
const spacingMm = z.number().positive().max(FARTHEST_MM);

/** Where free points are, from any origin. */
export const pointsSchema = z
  .array(
    z.strictObject({
      xMm: z.number().min(-FARTHEST_MM).max(FARTHEST_MM),
      yMm: z.number().min(-FARTHEST_MM).max(FARTHEST_MM),
    }),
  )
  .min(1)
  .max(MOST_POSITIONS);

/** Positions of a rectangle: on its edge alone, or in the whole grid. */
export const countInRectangle = (rows: number, columns: number, edgeOnly: boolean): number =>
  edgeOnly && rows > 1 && columns > 1 ? 2 * (rows + columns) - 4 : rows * columns;

/** Where the positions are, seen from the tool side. Position numbers count from 1. */
export const layoutSchema = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('circle'),
    count,
    diameterMm: spacingMm,
    /** Where position 1 lies, clockwise from twelve o'clock. */
    firstAngleDeg: z.number().min(-360).max(360).default(0),
    direction: z.enum(['clockwise', 'counter-clockwise']).default('clockwise'),
  }),
  z
    .strictObject({
      kind: z.literal('rectangle'),
      rows: count,
      columns: count,
      pitchXMm: spacingMm,
      pitchYMm: spacingMm,
      /** `true`: fasteners along the edge only, numbered clockwise from the upper left; `false`: a full grid, row by row. */
      edgeOnly: z.boolean().default(false),
      /** Every second row stands half a pitch to the right; in a full grid only. */
      staggered: z.boolean().optional(),
      /** Places that have no fastener, numbered as if all had one; the others close up. */
      missing: z.array(count).max(MOST_POSITIONS).optional(),
    })
    .refine(({ staggered, edgeOnly }) => !(staggered && edgeOnly), {
      path: ['staggered'],
      error: 'Fasteners along the edge have no rows to stagger.',
      params: { expected: 'false, or a full grid' },
    })
    .refine(
      ({ rows, columns, edgeOnly, missing = [] }) =>
        missing.every((one) => one <= countInRectangle(rows, columns, edgeOnly)),
      {
        path: ['missing'],
        error: 'One of these places is not there.',
        params: { expected: 'places that the rectangle has' },
      },
    )
    .refine(
      ({ rows, columns, edgeOnly, missing = [] }) => new Set(missing).size < countInRectangle(rows, columns, edgeOnly),
      {
        path: ['missing'],
        error: 'No fastener is left.',
        params: { expected: 'at least one place with a fastener' },
      },
    )
    .refine(({ rows, columns, edgeOnly }) => countInRectangle(rows, columns, edgeOnly) <= MOST_POSITIONS, {
      path: ['rows'],
      error: 'The rectangle has too many places.',
      params: { expected: `rows and columns that make at most ${MOST_POSITIONS} positions` },
    }),
  z.strictObject({ kind: z.literal('line'), count, pitchMm: spacingMm }),
  z.strictObject({
    kind: z.literal('points'),
    points: pointsSchema,
  }),
]);
export type Layout = z.infer<typeof layoutSchema>;

/** One place of a layout. x to the right, y downwards, origin in the middle, seen from the tool side. */
export interface Place {
  readonly position: number;
  readonly xMm: number;
  readonly yMm: number;
}

export const ORDER_METHODS = ['star', 'circular', 'from-the-middle'] as const;

/** The sequence of positions in a round: by a method, or the user's own. */
export const orderSchema = z.discriminatedUnion('method', [
  z.strictObject({ method: z.enum(ORDER_METHODS) }),
  z.strictObject({
    method: z.literal('own'),
    positions: z.array(z.number().int().positive()).min(1).max(MOST_POSITIONS),
  }),
]);
export type Order = z.infer<typeof orderSchema>;
export type OrderMethod = (typeof ORDER_METHODS)[number];
