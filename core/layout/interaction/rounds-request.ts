import { z } from 'zod';
import { invalid, ok, type Result } from '../../failure/failure.ts';
import { MOST_POSITIONS } from '../layout.ts';
import type { SourceField } from './source.ts';

export const MOST_ROUNDS = 50;

const position = z.number().int().min(1).max(MOST_POSITIONS);
const oneRound = z.array(position).min(1).max(MOST_POSITIONS);

/** An order for all rounds, or one for each. */
export const ordersSchema = z.union([oneRound, z.array(oneRound).min(1).max(MOST_ROUNDS)]);
export type Orders = z.infer<typeof ordersSchema>;

const forceN = z.number().positive().max(1e9);

/** Per round one figure, or one for each pull. */
export const targetsSchema = z
  .array(
    z.union([forceN, z.array(forceN).min(1).max(MOST_POSITIONS)]).describe('a force, N, or one for each pull in order'),
  )
  .min(1)
  .max(MOST_ROUNDS);

export const atOnceSchema = z.number().int().min(1).max(4);

/**
 * Orders of the rounds, bolts from 0.
 *
 * @returns refused with the position that repeats or is not there, the order with a gap, or a matrix of another size
 */
export function roundOrders(
  order: Orders,
  rounds: number,
  count: number,
  source: SourceField,
): Result<readonly (readonly number[])[]> {
  const lists = listsOf(order);
  const isShared = typeof order[0] === 'number';
  for (const [index, list] of lists.entries()) {
    const odd = orderFault(list, count, source, isShared ? 'order' : `order[${index}]`);
    if (odd) return odd;
  }
  if (!isShared && lists.length !== rounds) {
    const message = `There are ${lists.length} orders for ${rounds} round${rounds === 1 ? '' : 's'}.`;
    return invalid('order', message, 'one order for all rounds, or one for each');
  }
  const fromZero = lists.map((list) => list.map((one) => one - 1));
  return ok(Array.from({ length: rounds }, (_, index) => fromZero[isShared ? 0 : index]!));
}

function listsOf(order: Orders): readonly (readonly number[])[] {
  const lists = order.filter((entry) => typeof entry !== 'number');
  return lists.length > 0 ? lists : [order.filter((entry) => typeof entry === 'number')];
}

function orderFault(list: readonly number[], count: number, source: SourceField, field: string) {
  const most = Math.max(...list);
  const expected = `each of the positions 1 to ${count} once`;
  const seen = new Set<number>();
  for (const [index, position] of list.entries()) {
    if (seen.has(position)) return invalid(`${field}[${index}]`, `Position ${position} comes twice.`, expected);
    seen.add(position);
  }
  if (list.length === most && most > count) {
    const message = `The order has ${most} positions, and this describes ${count} bolt${count === 1 ? '' : 's'}.`;
    return invalid(
      source === 'model' ? 'order' : source,
      message,
      source === 'model' ? expected : `as many bolts as positions, ${most}`,
    );
  }
  const stray = list.findIndex((position) => position > count);
  if (stray >= 0) return invalid(`${field}[${stray}]`, `There is no position ${list[stray]}.`, expected);
  const missing = Array.from({ length: count }, (_, index) => index + 1).find((position) => !seen.has(position));
  return missing === undefined ? undefined : invalid(field, `Position ${missing} is missing.`, expected);
}

/** Targets of each pull; refused with the round that has another number of figures than pulls. */
export function roundTargets(
  targetsN: z.infer<typeof targetsSchema>,
  count: number,
): Result<readonly (readonly number[])[]> {
  for (const [index, round] of targetsN.entries()) {
    if (typeof round !== 'number' && round.length !== count) {
      const message = `This round has ${round.length} figure${round.length === 1 ? '' : 's'} for ${count} pull${count === 1 ? '' : 's'}.`;
      return invalid(`targetsN[${index}]`, message, `one figure, or ${count}`);
    }
  }
  return ok(targetsN.map((round) => (typeof round === 'number' ? repeated(round, count) : round)));
}

/** A figure for all positions, or one for each. */
export function byPosition(
  figure: number | readonly number[],
  count: number,
  field: string,
): Result<readonly number[]> {
  if (typeof figure === 'number') return ok(repeated(figure, count));
  if (figure.length === count) return ok(figure);
  const message = `There ${figure.length === 1 ? 'is 1 figure' : `are ${figure.length} figures`} for ${count} position${count === 1 ? '' : 's'}.`;
  return invalid(field, message, `one figure, or ${count}`);
}

const repeated = (figure: number, count: number): readonly number[] => Array.from({ length: count }, () => figure);
