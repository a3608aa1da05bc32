import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Workshop, workshop } from '../testing/workshop.ts';
import { answeredBeside } from './answered-beside.ts';
import { Turns } from './turns.ts';

const SEARCH = {
  model: { kind: 'neighbours', arrangement: 'circle', count: 60, neighbour: 0.3, decay: -0.2 },
  targetN: 1000,
  mostPulls: 600,
};
const EVEN = [
  [2, 1],
  [1, 2],
];

describe('a long calculation', () => {
  let shop: Workshop;
  beforeAll(async () => {
    shop = await workshop();
  });
  afterAll(() => shop.close());

  it('lets others be answered meanwhile, and ends when nobody waits for it', async () => {
    const nobodyWaits = new AbortController();
    const question = { name: 'order-search', input: SEARCH, rows: [] } as const;
    const ended: string[] = [];
    const search = answeredBeside(question, nobodyWaits.signal).finally(() => ended.push('search'));
    const quick = { layout: 'circle', count: 8, method: 'star' };
    expect(await shop.ask('POST', '/calc/tightening-order', quick)).toMatchObject({ status: 200 });
    ended.push('order');
    nobodyWaits.abort();
    expect(await search).toMatchObject({ ok: false, failure: { kind: 'broken' } });
    expect(ended).toEqual(['order', 'search']);
  });

  it('is answered and refused as on the command line, one or many', async () => {
    const request = { complianceMmPerN: EVEN, order: [1, 2], finalN: 100, rounds: 1 };
    const many = Array.from({ length: 30 }, () => ({ layout: 'circle', count: 4, method: 'star' }));
    expect(await shop.ask('POST', '/calc/round-targets', request)).toMatchObject({ status: 200, body: { spread: 0 } });
    expect(await shop.ask('POST', '/calc/round-targets', { ...request, ceilingN: 90 })).toMatchObject({
      status: 400,
      body: { field: 'finalN', expected: 'at most 90 N' },
    });
    expect(await shop.ask('POST', '/calc/tightening-order', [...many, { layout: 'circle' }])).toMatchObject({
      body: [...many.map(() => ({ order: [1, 3, 2, 4] })), { error: { field: 'method' } }],
    });
  });
});

it('takes turns in the order of coming, so many at once', async () => {
  const turns = new Turns(2);
  const told: string[] = [];
  const first = await turns.take();
  await turns.take();
  const third = turns.take().then((giveBack) => {
    told.push('third');
    return giveBack;
  });
  const fourth = turns.take().then(() => told.push('fourth'));
  told.push('first gives back');
  first();
  (await third)();
  await fourth;
  expect(told).toEqual(['first gives back', 'third', 'fourth']);
});
