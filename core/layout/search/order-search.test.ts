import { describe, expect, it } from 'vitest';
import { randomWords } from '../../statistics/random-words.ts';
import { elasticInteraction, elasticInteractionRequestSchema } from '../interaction/elastic-interaction.ts';
import { evennessOf } from '../interaction/evenness.ts';
import { modelled } from '../interaction/model.ts';
import { simulate } from '../interaction/simulate.ts';
import { matrixOf } from '../interaction/square-matrix.ts';
import { RING_OF_EIGHT } from '../testing/ring-of-eight.ts';
import { type OrderSearch, orderSearch, orderSearchRequestSchema, searching } from './order-search.ts';
import { searchOrders } from './search-orders.ts';

const asked = (request: object) => orderSearch(orderSearchRequestSchema.parse(request));
const found = (request: object): OrderSearch => {
  const answer = asked(request);
  if (!answer.ok) throw new Error(JSON.stringify(answer.failure));
  return answer.value;
};

const soft = { model: RING_OF_EIGHT, targetN: 100, mostPulls: 16 };

/** No ring: each bolt has a compliance of its own. */
const FIVE = matrixOf(5, (i, j) => (i === j ? 1 + i / 4 : 0.6 / (1 + Math.abs(i - j))));

describe('a search through all orders', () => {
  it('finds what trying each order by itself finds', () => {
    let least = Number.POSITIVE_INFINITY;
    const walk = (order: readonly number[]): void => {
      if (order.length === 5) {
        const { finalN } = simulate({ first: FIVE }, [{ bolts: order, targetsN: order.map(() => 1) }]);
        least = Math.min(least, evennessOf(finalN).spread);
      }
      for (let bolt = 0; bolt < 5; bolt++) if (!order.includes(bolt)) walk([...order, bolt]);
    };
    walk([]);
    const search = searchOrders(
      { givingWay: { first: FIVE }, count: 5, targetsN: [1], isRing: false, known: [[0, 1, 2, 3, 4]], draws: 500 },
      randomWords(1),
    );
    let step = search.next();
    while (!step.done) step = search.next();
    expect(step.value).toMatchObject({ isExact: true, tried: 120, spread: least });
  });

  it('keeps the first bolt of a ring, and is never worse than star or circle', () => {
    const { byRounds, isExact, order, pulls, tried } = found({ ...soft, draws: 6000 });
    expect({ isExact, first: order[0], pulls, tried }).toEqual({ isExact: true, first: 1, pulls: 16, tried: 2 * 5040 });
    for (const { spread, starSpread, circularSpread } of byRounds) {
      expect(spread).toBeLessThanOrEqual(Math.min(starSpread, circularSpread) + 1e-12);
    }
  });

  it('moves every bolt of a joint that is no ring', () => {
    const model = { kind: 'neighbours', arrangement: 'line', count: 4, neighbour: 0.4, decay: 0.5 };
    expect(found({ model, targetN: 1, mostPulls: 4 })).toMatchObject({ isExact: true, tried: 24 });
  });

  it('goes from the first share evenly to the whole', () => {
    const { byRounds } = found({ ...soft, mostPulls: 24, firstShare: 0.4, draws: 0 });
    const star = [1, 5, 3, 7, 2, 6, 4, 8].map((position) => position - 1);
    const joint = modelled(RING_OF_EIGHT);
    const rounds = [40, 70, 100].map((target) => ({ bolts: star, targetsN: star.map(() => target) }));
    const played = joint.ok ? evennessOf(simulate(joint.value, rounds).finalN).spread : Number.NaN;
    expect(byRounds[2]?.starSpread).toBeCloseTo(played, 12);
  });

  it('compares a cover with the star over its own places', () => {
    const layout = { kind: 'rectangle', rows: 2, columns: 3, pitchXMm: 90, pitchYMm: 70 };
    const model = { kind: 'plate', layout, heightMm: 20, bedNPerMm3: 10, boltNPerMm: 1e6 };
    const star = [1, 6, 2, 5, 3, 4];
    const played = elasticInteraction(elasticInteractionRequestSchema.parse({ model, order: star, targetsN: [100] }));
    const { byRounds } = found({ model, targetN: 100, mostPulls: 6, draws: 0 });
    expect(byRounds[0]?.starSpread).toBeCloseTo(played.ok ? played.value.spread : Number.NaN, 12);
  });
});

describe('a search by annealing', () => {
  it('comes to the best of all orders with most seeds, and near to it with each', () => {
    const exact = found({ ...soft, mostPulls: 8, draws: 6000 });
    const annealed = [1, 2, 3, 4, 5].map((seed) => found({ ...soft, mostPulls: 8, draws: 1600, seed }));
    expect(annealed.map(({ isExact }) => isExact)).toEqual(Array(5).fill(false));
    const over = annealed.map(({ spread }) => spread / exact.spread).toSorted((a, b) => a - b);
    expect(over[3]).toBeLessThan(1.001);
    expect(over[4]).toBeLessThan(1.1);
  });

  it('finds the same for the same seed', () => {
    expect(found({ ...soft, draws: 300, seed: 3 })).toEqual(found({ ...soft, draws: 300, seed: 3 }));
  });

  it('gives each position once', () => {
    const model = { kind: 'neighbours', arrangement: 'line', count: 15, neighbour: 0.3, decay: 0.4 };
    const { order } = found({ model, targetN: 1, mostPulls: 15, draws: 500 });
    expect(order.toSorted((a, b) => a - b)).toEqual(Array.from({ length: 15 }, (_, index) => index + 1));
  });

  it('tells how far it is and can be left', () => {
    const search = searching(orderSearchRequestSchema.parse({ ...soft, draws: 1000 }));
    if (!search.ok) throw new Error('refused');
    const first = search.value.next();
    expect(first).toMatchObject({ done: false, value: { rounds: 1, share: 0.1 } });
  });
});

it('takes one bolt and two', () => {
  expect(found({ complianceMmPerN: [[1]], targetN: 5, mostPulls: 1 })).toMatchObject({
    order: [1],
    finalN: [5],
    isExact: true,
  });
  const two = [
    [1, 0.4],
    [0.4, 1],
  ];
  expect(found({ complianceMmPerN: two, targetN: 5, mostPulls: 4 }).rounds).toBe(2);
});

it('refuses fewer pulls than bolts', () => {
  expect(asked({ ...soft, mostPulls: 7 })).toMatchObject({ failure: { field: 'mostPulls', expected: 'at least 8' } });
});
