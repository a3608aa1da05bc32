import { CALCULATIONS } from '@clampwright/core/calculations';
import { z } from 'zod';
import { type Check, check, describeSource } from '../check.ts';
import { fieldFrom } from '../got.ts';
import {
  CROSS_ORDERS,
  CROSS_ORDERS_READ,
  NEIGHBOUR_ORDERS,
  PAINTED_LABELS,
  PAINTED_LABELS_READ,
  PCC_1_ROUNDS,
  SCHEDULES_READ,
  type Schedule,
} from '../published/orders.ts';

function starOf(count: number): readonly unknown[] {
  const order = fieldFrom('tightening-order', { layout: 'circle', count, method: 'star' }, 'order');
  return Array.isArray(order) ? order : [];
}

const order = (printed: string): Check => {
  const count = printed.split(' ').length;
  return check(`${count} bolts, order`, () => starOf(count).join(' '), { value: printed, unit: '' });
};

/** What is painted at each position, clockwise from position 1: when it is its turn. */
const labels = (printed: string): Check => {
  const count = printed.split(' ').length;
  const painted = () => starOf(count).map((_, index) => starOf(count).indexOf(index + 1) + 1);
  return check(`${count} bolts, painted labels`, () => painted().join(' '), { value: printed, unit: '' });
};

const ofNeighbours = ([neighbours, printed]: (typeof NEIGHBOUR_ORDERS)[number]): Check => {
  const count = printed.split(' ').length;
  const request = { layout: 'circle', count, method: 'star', neighboursAsOne: neighbours };
  return check(
    `${count} bolts, ${neighbours} neighbours as one`,
    () =>
      z
        .array(z.number())
        .parse(fieldFrom('tightening-order', request, 'order'))
        .join(' '),
    { value: printed, unit: '' },
  );
};

const roundsSchema = z.array(z.object({ targetShare: z.number(), order: z.array(z.number()) }));

/** Shares of the rounds, percent, and the order of the last. */
function roundsOf(request: object): string {
  const rounds = roundsSchema.parse(
    fieldFrom('tightening-order', { layout: 'circle', method: 'star', ...request }, 'rounds'),
  );
  const percents = rounds.map(({ targetShare }) => Math.round(100 * targetShare));
  return `${percents.join(' ')}; last ${rounds.at(-1)?.order.join(' ') ?? ''}`;
}

const STAR_OF_EIGHT = '1 5 3 7 2 6 4 8';
const ROUND_OF_EIGHT = '1 2 3 4 5 6 7 8';

const schedule = ({ source, percents, closing }: Schedule): Check => {
  const roundShares = percents.map((percent) => percent / 100);
  const asked = closing === 'circular' ? { roundShares, closingRounds: 1 } : { roundShares: [...roundShares, 1] };
  return check(`rounds of eight bolts, ${source}`, () => roundsOf({ count: 8, ...asked }), {
    value: `${percents.join(' ')} 100; last ${closing === 'circular' ? ROUND_OF_EIGHT : STAR_OF_EIGHT}`,
    unit: '',
  });
};

/** The rounds of our example, held to the ranges of the code. */
function exampleInRanges(): string {
  const { roundShares } = z
    .object({ roundShares: z.array(z.number()) })
    .parse(CALCULATIONS.find(({ name }) => name === 'tightening-order')?.example);
  const isIn = PCC_1_ROUNDS.map(([from, to], index) => {
    const percent = 100 * (roundShares[index] ?? 0);
    return percent >= from && percent <= to;
  });
  return isIn.every(Boolean) && roundShares.length === PCC_1_ROUNDS.length ? 'within' : 'outside';
}

export const ORDER_SOURCES = [
  describeSource('ASME PCC-1, legacy cross pattern', 'from memory', [
    ...CROSS_ORDERS.map(order),
    ...PAINTED_LABELS.map(labels),
    ...NEIGHBOUR_ORDERS.map(ofNeighbours),
    check('rounds at 30, 70 and 100 % in the ranges of the legacy rounds', exampleInRanges, {
      value: 'within',
      unit: '',
    }),
  ]),
  describeSource('Cross pattern of eight and twelve bolts (secondary tables)', 'read', [
    ...CROSS_ORDERS_READ.map(order),
    ...PAINTED_LABELS_READ.map(labels),
  ]),
  describeSource('Rounds of flange bolts (secondary pages and a work sheet)', 'read', SCHEDULES_READ.map(schedule)),
];
