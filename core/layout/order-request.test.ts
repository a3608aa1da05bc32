import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parse } from '../failure/parse.ts';
import { type OrderAnswer, orderOf, orderRequestSchema } from './order-request.ts';

fc.configureGlobal({ seed: 24 });

const asked = (request: object) => {
  const read = parse(orderRequestSchema, request);
  return read.ok ? orderOf(read.value) : read;
};
const answered = (request: object): OrderAnswer => {
  const answer = asked(request);
  if (!answer.ok) throw new Error(JSON.stringify(answer.failure));
  return answer.value;
};

describe('order asked for without a joint', () => {
  it('answers for circle, line and rectangle', () => {
    expect(asked({ layout: 'circle', count: 8, method: 'star' })).toEqual({
      ok: true,
      value: { order: [1, 5, 3, 7, 2, 6, 4, 8] },
    });
    expect(asked({ layout: 'line', count: 3, method: 'from-the-middle' })).toEqual({
      ok: true,
      value: { order: [2, 1, 3] },
    });
    expect(asked({ layout: 'rectangle', rows: 2, columns: 2, method: 'circular' })).toEqual({
      ok: true,
      value: { order: [1, 2, 3, 4] },
    });
  });

  it('answers for the largest', () => {
    const answer = asked({ layout: 'rectangle', rows: 10, columns: 20, method: 'star' });
    expect(answer.ok && new Set(answer.value.order).size).toBe(200);
  });

  it.each<[string, object, string]>([
    ['a circle without a count', { layout: 'circle', method: 'star' }, 'count'],
    ['a circle of one', { layout: 'circle', count: 1, method: 'star' }, 'count'],
    ['a line of 201', { layout: 'line', count: 201, method: 'circular' }, 'count'],
    ['a rectangle without columns', { layout: 'rectangle', rows: 3, method: 'star' }, 'columns'],
    ['a rectangle of one', { layout: 'rectangle', rows: 1, columns: 1, method: 'star' }, 'rows'],
    ['a rectangle of 210', { layout: 'rectangle', rows: 14, columns: 15, method: 'star' }, 'rows'],
    [
      'a rectangle whose count does not fit',
      { layout: 'rectangle', rows: 2, columns: 3, count: 5, method: 'star' },
      'count',
    ],
    ['points without points', { layout: 'points', method: 'star' }, 'points'],
    [
      'two fasteners in one point',
      {
        layout: 'points',
        method: 'star',
        points: [
          { xMm: 0, yMm: 0 },
          { xMm: 9, yMm: 0 },
          { xMm: 0, yMm: 0 },
        ],
      },
      'points[2]',
    ],
    [
      'two fasteners a breath apart',
      { layout: 'points', method: 'star', points: [0, 1e-9].map((xMm) => ({ xMm, yMm: 0 })) },
      'points[1]',
    ],
    ['a line without length', { layout: 'line', count: 3, pitchXMm: 1e-12, method: 'star' }, 'pitchXMm'],
    [
      'a point beyond reach',
      { layout: 'points', method: 'star', points: [0, 1e308].map((xMm) => ({ xMm, yMm: 0 })) },
      'points[1].xMm',
    ],
    ['shares that fall', { layout: 'circle', count: 8, method: 'star', roundShares: [1, 0.5] }, 'roundShares[1]'],
    ['a gap without a force', { layout: 'circle', count: 8, method: 'star', bedNPerMm: 1000 }, 'targetN'],
    [
      'a missing place that is not there',
      { layout: 'rectangle', rows: 2, columns: 2, missing: [5], method: 'star' },
      'missing',
    ],
    [
      'a staggered edge',
      { layout: 'rectangle', rows: 3, columns: 3, edgeOnly: true, staggered: true, method: 'star' },
      'staggered',
    ],
    ['an own order with a repeat', { layout: 'line', count: 3, method: 'own', positions: [1, 2, 2] }, 'positions[2]'],
    ['an own order with a gap', { layout: 'line', count: 3, method: 'own', positions: [1, 2] }, 'positions'],
    ['an own order beside a method', { layout: 'line', count: 2, method: 'star', positions: [1, 2] }, 'positions'],
    ['a stiffest part of a circle', { layout: 'circle', count: 8, method: 'from-the-stiffest' }, 'method'],
    ['a stiffest part in a star', { layout: 'line', count: 8, method: 'star', stiffest: 'left' }, 'stiffest'],
    ['quality without a size', { layout: 'circle', count: 8, method: 'star', targetN: 100 }, 'diameterMm'],
    ['five wrenches', { layout: 'circle', count: 8, method: 'star', wrenches: 5 }, 'wrenches'],
    ['a circle with rows', { layout: 'circle', count: 8, rows: 2, method: 'star' }, 'rows'],
  ])('refuses %s, naming the field', (_, request, field) => {
    const answer = asked(request);
    expect(answer).toMatchObject({ ok: false, failure: { kind: 'invalid', field } });
    const { message, expected } = answer.ok || answer.failure.kind !== 'invalid' ? {} : answer.failure;
    expect(message).not.toBe(expected);
  });
});

describe('groups for several wrenches', () => {
  it('lie on opposite sides of a flange', () => {
    expect(answered({ layout: 'circle', count: 8, method: 'star', wrenches: 2 }).groups).toEqual([
      [1, 5],
      [3, 7],
      [2, 6],
      [4, 8],
    ]);
    expect(answered({ layout: 'circle', count: 12, method: 'star', wrenches: 3 }).groups).toEqual([
      [1, 5, 9],
      [7, 11, 3],
      [4, 8, 12],
      [10, 2, 6],
    ]);
    expect(answered({ layout: 'circle', count: 8, method: 'circular', wrenches: 4 }).groups).toEqual([
      [1, 3, 5, 7],
      [2, 4, 6, 8],
    ]);
  });

  const counts = Array.from({ length: 47 }, (_, index) => index + 2);
  const pulled = (count: number, wrenches: number) =>
    answered({ layout: 'circle', count, method: 'star', wrenches, diameterMm: 400, targetN: 1000 });

  it.each([2, 3, 4])('take each position once with %i wrenches', (wrenches) => {
    for (const count of counts) {
      const { groups = [], order } = pulled(count, wrenches);
      expect(new Set(order).size).toBe(count);
      expect(groups.flat()).toEqual(order);
    }
  });

  it.each([2, 3, 4])('pull to no side where the flange divides evenly by %i', (wrenches) => {
    for (const count of counts.filter((one) => one % wrenches === 0)) {
      expect(pulled(count, wrenches).quality?.momentNm).toBe(0);
    }
  });

  it('keep an own order as it is', () => {
    const own = { layout: 'circle', count: 4, method: 'own', positions: [4, 3, 2, 1], wrenches: 2 };
    expect(answered(own).groups).toEqual([
      [4, 3],
      [2, 1],
    ]);
  });
});

it('takes every place once: any points, method and number of wrenches', () => {
  const requests = fc.record({
    points: fc.uniqueArray(fc.record({ xMm: fc.integer({ max: 99, min: 0 }), yMm: fc.integer({ max: 99, min: 0 }) }), {
      minLength: 2,
      maxLength: 24,
      selector: ({ xMm, yMm }) => 100 * xMm + yMm,
    }),
    method: fc.constantFrom('star', 'circular', 'from-the-middle', 'from-the-stiffest'),
    wrenches: fc.integer({ min: 1, max: 4 }),
  });
  fc.assert(
    fc.property(requests, (request) => {
      const { order, rounds = [] } = answered({ layout: 'points', closingRounds: 1, ...request });
      const each = request.points.map((_, index) => index + 1);
      for (const one of [order, ...rounds.map((round) => round.order)]) {
        expect(one.toSorted((a, b) => a - b)).toEqual(each);
      }
    }),
  );
});

it('takes neighbours as one in a star, and says where they cannot be', () => {
  const large = { layout: 'circle', count: 48, method: 'star', neighboursAsOne: 4 };
  expect(answered(large).order.slice(0, 8)).toEqual([1, 2, 3, 4, 25, 26, 27, 28]);
  expect(asked({ ...large, method: 'circular' })).toMatchObject({ ok: false, failure: { field: 'neighboursAsOne' } });
});

describe('rounds', () => {
  it('go up in shares and close by the numbers', () => {
    const { rounds } = answered({
      layout: 'circle',
      count: 4,
      method: 'star',
      roundShares: [0.3, 0.7, 1],
      closingRounds: 1,
    });
    expect(rounds).toEqual([
      { round: 1, targetShare: 0.3, order: [1, 3, 2, 4] },
      { round: 2, targetShare: 0.7, order: [1, 3, 2, 4] },
      { round: 3, targetShare: 1, order: [1, 3, 2, 4] },
      { round: 4, targetShare: 1, order: [1, 2, 3, 4] },
    ]);
  });
});

it('closes with the wrenches on opposite sides after an order of one’s own too', () => {
  const own = { layout: 'circle', count: 4, method: 'own', positions: [1, 3, 2, 4], wrenches: 2, closingRounds: 1 };
  expect(answered(own).rounds?.at(-1)?.order).toEqual([1, 3, 2, 4]);
});

describe('the stiffest part', () => {
  it('of a splice is its middle column, from which rows go to the free edges', () => {
    const splice = { layout: 'rectangle', rows: 2, columns: 4, pitchXMm: 70, method: 'from-the-stiffest' };
    expect(answered({ ...splice, stiffest: 'middle-column' }).order).toEqual([2, 3, 6, 7, 1, 4, 5, 8]);
    expect(answered({ ...splice, stiffest: 'left' }).order).toEqual([1, 5, 2, 6, 3, 7, 4, 8]);
    expect(answered({ ...splice, stiffest: 'right' }).order).toEqual([4, 8, 3, 7, 2, 6, 1, 5]);
    expect(answered({ ...splice, stiffest: 'top' }).order).toEqual([2, 3, 1, 4, 6, 7, 5, 8]);
    expect(answered({ ...splice, stiffest: 'bottom' }).order).toEqual([6, 7, 5, 8, 2, 3, 1, 4]);
    expect(answered({ ...splice, rows: 3, columns: 2, stiffest: 'middle-row' }).order).toEqual([3, 4, 1, 2, 5, 6]);
  });
});

describe('quality of an order', () => {
  const flange = { layout: 'circle', count: 8, diameterMm: 400, targetN: 50_000, bedNPerMm: 100_000 };

  it('finds the moment of one bolt pulled alone, and the gap that it opens', () => {
    const { quality } = answered({ ...flange, method: 'star' });
    // one bolt at 200 mm: 50 kN · 0.2 m; w = M·r/(k·n·R²/2) to both sides of the centre
    expect(quality?.momentNm).toBeCloseTo(10_000, 6);
    expect(quality?.gapMm).toBeCloseTo((2 * 10_000e3 * 200) / (100_000 * 8 * (200 ** 2 / 2)), 9);
  });

  it('finds a circular order worse balanced than a star, and shorter to walk', () => {
    const star = answered({ ...flange, method: 'star' }).quality;
    const circular = answered({ ...flange, method: 'circular' }).quality;
    // four neighbours pulled: 50 kN · 0.2 m · 1/sin(22.5°)
    expect(circular?.momentNm).toBeCloseTo(10_000 / Math.sin(Math.PI / 8), 6);
    expect(star?.momentNm).toBeLessThan(circular?.momentNm ?? 0);
    expect(circular?.walkM).toBeCloseTo((7 * Math.PI * 0.4) / 8, 9);
    expect(star?.walkM).toBeGreaterThan(circular?.walkM ?? 9);
  });

  it('names the pull at which the moment is largest, and how far off the centre the clamp then acts', () => {
    const line = { layout: 'line', count: 3, pitchXMm: 100, method: 'own', positions: [2, 1, 3], targetN: 1000 };
    // only the outer bolt is off the centre, by 0.1 m
    expect(answered({ ...line, roundShares: [0.5, 1] }).quality).toMatchObject({
      momentNm: expect.closeTo(50, 9),
      momentAtPull: 2,
      offCentreMm: expect.closeTo(100 / 6, 9),
    });
  });

  it('tilts the part about the axis of the moment', () => {
    const plate = { layout: 'rectangle', rows: 2, columns: 2, pitchXMm: 200, pitchYMm: 20, targetN: 1000 };
    const left = answered({ ...plate, method: 'own', positions: [1, 3, 2, 4], bedNPerMm: 1000 }).quality;
    // the left two pulled: M = 2 · 1 kN · 100 mm about the short side; w = M·x/(k·4·100²), to both sides
    expect(left?.momentNm).toBeCloseTo(200, 9);
    expect(left?.gapMm).toBeCloseTo((2 * 200_000 * 100) / (1000 * 4 * 100 ** 2), 9);
  });

  it('counts the way of the wrench that walks farthest, not of all together', () => {
    const two = { ...flange, count: 4, method: 'own', positions: [1, 3, 2, 4], wrenches: 2 };
    expect(answered(two).quality?.walkM).toBeCloseTo((Math.PI * 0.4) / 4, 9);
  });

  it('counts pulls and minutes of all rounds', () => {
    const { quality } = answered({
      ...flange,
      method: 'circular',
      roundShares: [0.5, 1],
      secondsPerPull: 30,
      wrenches: 2,
    });
    expect(quality?.pulls).toBe(16);
    expect(quality?.minutes).toBeCloseTo(8 * 0.5 + (quality?.walkM ?? 0) / 40, 9);
  });
});
