import { z } from 'zod';
import { invalid, ok, type Result } from '../failure/failure.ts';
import { parse } from '../failure/parse.ts';
import { inGroups } from './in-groups.ts';
import { type Layout, layoutSchema, MOST_POSITIONS, ORDER_METHODS, type Place, pointsSchema } from './layout.ts';
import { groupedOrder } from './orders/grouped.ts';
import { type PulledRound, type Quality, qualityOf } from './orders/quality.ts';
import { STIFFEST_PARTS, stiffestFirst } from './orders/stiffest-first.ts';
import { places, samePlace } from './places.ts';
import { byMethod, positionsInOrder } from './positions-in-order.ts';
import { fallingShare } from './rising-shares.ts';
import { starOfNeighbours } from './star.ts';

const size = z.number().int().min(1).max(MOST_POSITIONS);
const spacing = z.number().positive().max(100_000);
const position = z.number().int().min(1).max(MOST_POSITIONS);

/** What is asked for when only an order is wanted, without a joint. */
export const orderRequestSchema = z.strictObject({
  layout: z.enum(['circle', 'rectangle', 'line', 'points']).describe('how the positions lie'),
  count: z.number().int().min(2).max(MOST_POSITIONS).optional().describe('positions of a circle or a line, 2 to 200'),
  diameterMm: spacing.optional().describe('bolt circle, mm; counts for the quality alone'),
  rows: size.optional().describe('rows of a rectangle'),
  columns: size.optional().describe('columns of a rectangle'),
  edgeOnly: z
    .boolean()
    .optional()
    .describe(
      'a rectangle with fasteners along its edge only, numbered clockwise from the upper left; else row by row',
    ),
  staggered: z.boolean().optional().describe('every second row of a full grid stands half a pitch to the right'),
  missing: z
    .array(position)
    .max(MOST_POSITIONS)
    .optional()
    .describe('places of a rectangle without a fastener, numbered as if all had one'),
  pitchXMm: spacing.optional().describe('spacing of columns or of a line, mm; left out: as that of rows'),
  pitchYMm: spacing.optional().describe('spacing of rows, mm; left out: as that of columns'),
  points: pointsSchema
    .optional()
    .describe('where free points are, x to the right, y downwards, seen from the tool side, mm'),
  method: z.enum([...ORDER_METHODS, 'from-the-stiffest', 'own']).describe('how the order runs'),
  neighboursAsOne: z
    .number()
    .int()
    .min(1)
    .max(4)
    .default(1)
    .describe('bolts next to each other that a star takes as one, 1 to 4, as is done on large flanges'),
  stiffest: z
    .enum(STIFFEST_PARTS)
    .optional()
    .describe('where a connection is held most rigidly; its middle if left out'),
  positions: z.array(position).max(MOST_POSITIONS).optional().describe('an order of one’s own'),
  wrenches: z.number().int().min(1).max(4).default(1).describe('wrenches that pull at the same time, 1 to 4'),
  roundShares: z
    .array(z.number().gt(0).max(1))
    .min(1)
    .max(20)
    .optional()
    .describe('share of the target in each round, such as 0.3, 0.7, 1'),
  closingRounds: z
    .number()
    .int()
    .min(0)
    .max(10)
    .default(0)
    .describe('rounds by the numbers at the whole target, until nothing moves'),
  targetN: z.number().positive().max(1e9).optional().describe('force aimed at, N; with it the order is judged'),
  bedNPerMm: z
    .number()
    .positive()
    .max(1e12)
    .optional()
    .describe('stiffness of gasket or parts under each position, N/mm; with it the gap is told'),
  secondsPerPull: z.number().positive().max(3600).default(20).describe('one pull with putting on, s'),
  walkMPerMin: z.number().positive().max(200).default(40).describe('how fast one walks with the wrench, m/min'),
});
export type OrderRequest = z.infer<typeof orderRequestSchema>;

export interface OrderRound {
  readonly round: number;
  readonly targetShare: number;
  readonly order: readonly number[];
}

export interface OrderAnswer {
  readonly order: readonly number[];
  readonly groups?: readonly (readonly number[])[];
  readonly rounds?: readonly OrderRound[];
  readonly quality?: Quality;
}

/**
 * The tightening order for a circle, a rectangle, a line or free points; with rounds, groups for several wrenches and
 * a measure of its quality where they are asked for.
 *
 * @returns positions from 1, each once; refused with the field that is missing or makes fewer than 2 or more than 200
 */
export function orderOf(request: OrderRequest): Result<OrderAnswer> {
  const layout = layoutFrom(request);
  if (!layout.ok) return layout;
  const all = places(layout.value);
  const fault = placesFault(request, all) ?? roundsFault(request);
  if (fault) return fault;
  const single = singleOrder(request, layout.value, all);
  return single.ok ? answered(request, layout.value, all, single.value) : single;
}

function answered(
  request: OrderRequest,
  layout: Layout,
  all: readonly Place[],
  single: readonly number[],
): Result<OrderAnswer> {
  const { wrenches, roundShares, closingRounds, targetN } = request;
  const groups = request.method === 'own' ? inGroups(single, wrenches) : groupedOrder(all, single, wrenches);
  const closing = groupedOrder(all, byMethod(layout, 'circular'), wrenches);
  const pulled: readonly PulledRound[] = [
    ...(roundShares ?? [1]).map((share) => ({ share, groups })),
    ...Array.from({ length: closingRounds }, () => ({ share: 1, groups: closing })),
  ];
  const hasRounds = roundShares !== undefined || closingRounds > 0;
  const rounds = pulled.map((one, index) => ({ round: index + 1, targetShare: one.share, order: one.groups.flat() }));
  return ok({
    order: groups.flat(),
    ...(wrenches > 1 ? { groups } : {}),
    ...(hasRounds ? { rounds } : {}),
    ...(targetN === undefined
      ? {}
      : { quality: qualityOf(all, pulled, { ...request, targetN, isRing: layout.kind === 'circle' }) }),
  });
}

function singleOrder(request: OrderRequest, layout: Layout, all: readonly Place[]): Result<readonly number[]> {
  const { method, positions, stiffest, neighboursAsOne } = request;
  if (positions !== undefined && method !== 'own') {
    return invalid('positions', 'An order of one’s own stands beside a method.', 'left out, or the method "own"');
  }
  if (stiffest !== undefined && method !== 'from-the-stiffest') {
    return invalid('stiffest', 'It decides nothing in this method.', 'left out, or the method "from-the-stiffest"');
  }
  if (neighboursAsOne > 1) {
    if (method === 'star' && layout.kind === 'circle') return ok(starOfNeighbours(layout.count, neighboursAsOne));
    return invalid(
      'neighboursAsOne',
      'Only the star on a circle takes neighbours as one.',
      '1, or the star of a circle',
    );
  }
  if (method === 'own') {
    if (positions === undefined) return invalid('positions', 'It is missing.', 'each position once, in order');
    return positionsInOrder(layout, { method, positions });
  }
  if (method !== 'from-the-stiffest') return ok(byMethod(layout, method));
  if (layout.kind === 'circle') {
    return invalid('method', 'A circle has no stiffest part.', 'star, circular or own');
  }
  return ok(stiffestFirst(all, stiffest ?? 'middle'));
}

function placesFault(request: OrderRequest, all: readonly Place[]) {
  const field = { rectangle: 'rows', points: 'points', circle: 'count', line: 'count' }[request.layout];
  const count = all.length;
  if (count < 2 || count > MOST_POSITIONS) {
    return invalid(field, `${count} position${count === 1 ? '' : 's'}`, `2 to ${MOST_POSITIONS} positions in all`);
  }
  if (request.count !== undefined && request.count !== count) {
    return invalid('count', `${request.count} does not fit the places, which are ${count}`, `${count}, or left out`);
  }
  const together = samePlace(all);
  if (!together) return undefined;
  const named = request.layout === 'points' ? `points[${together[1] - 1}]` : SIZES[request.layout];
  return invalid(named, 'Two fasteners stand in one point.', 'a place of its own for each');
}

function roundsFault({ roundShares = [], bedNPerMm, targetN }: OrderRequest) {
  const falls = fallingShare(roundShares);
  if (falls) return falls;
  if (bedNPerMm === undefined || targetN !== undefined) return undefined;
  return invalid('targetN', 'A gap is asked for, and the force is missing.', 'a force, N');
}

const SIZES = { circle: 'diameterMm', line: 'pitchXMm', rectangle: 'pitchXMm' } as const;

const OF_KIND = {
  circle: ['count', 'diameterMm'],
  line: ['count', 'pitchXMm'],
  points: ['points'],
  rectangle: ['count', 'rows', 'columns', 'edgeOnly', 'staggered', 'missing', 'pitchXMm', 'pitchYMm'],
} as const;

const ALL_FIELDS = [
  'count',
  'diameterMm',
  'rows',
  'columns',
  'edgeOnly',
  'staggered',
  'missing',
  'pitchXMm',
  'pitchYMm',
  'points',
] as const;

/** Sizes that an order does not need are 1 mm until its quality is asked for. */
function layoutFrom(request: OrderRequest): Result<Layout> {
  const { layout, targetN } = request;
  const own: readonly string[] = OF_KIND[layout];
  const stray = ALL_FIELDS.find((name) => request[name] !== undefined && !own.includes(name));
  if (stray) return invalid(stray, `a ${layout} has no ${stray}`, 'left out, or another layout');
  const needed = { circle: ['count'], line: ['count'], points: ['points'], rectangle: ['rows', 'columns'] } as const;
  const missing = needed[layout].find((name) => request[name] === undefined);
  if (missing) return invalid(missing, `a ${layout} needs ${missing}`, `a whole number up to ${MOST_POSITIONS}`);
  const isSized = layout === 'points' || request[SIZES[layout]] !== undefined || request.pitchYMm !== undefined;
  if (targetN !== undefined && !isSized) {
    return invalid(SIZES[layout], 'The quality of an order depends on how large the joint is.', 'a length, mm');
  }
  return parse(layoutSchema, layoutFields(request));
}

function layoutFields(request: OrderRequest): unknown {
  const { layout: kind, count, rows, columns, staggered, missing, points, diameterMm = 1 } = request;
  switch (kind) {
    case 'circle':
      return { kind, count, diameterMm };
    case 'line':
      return { kind, count, pitchMm: request.pitchXMm ?? 1 };
    case 'points':
      return { kind, points };
    case 'rectangle': {
      const { pitchXMm = request.pitchYMm ?? 1, pitchYMm = pitchXMm, edgeOnly } = request;
      return { kind, rows, columns, pitchXMm, pitchYMm, edgeOnly, staggered, missing };
    }
  }
}
