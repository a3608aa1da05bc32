import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import {
  aWrench,
  identity,
  jobOnBracket,
  takeWrench,
  typedPull,
  type Workshop,
  workshop,
} from '../testing/workshop.ts';

let shop: Workshop;
beforeAll(async () => {
  shop = await workshop();
  const technician = await shop.signIn('technician');
  const jobId = await jobOnBracket(shop);
  await takeWrench(shop, jobId, aWrench('0700'), technician);
  const say = (command: unknown) => shop.ask('POST', `/jobs/${jobId}/commands`, { command }, technician);
  await say(typedPull('over', 60, { position: 1 }));
  await say({ kind: 'rework', cell: { jointRef: 'J1', stage: 1, round: 1, position: 1 }, way: 'loosened' });
  for (const [index, torqueNm] of [42.2, 41.5, 43, 42.4].entries())
    await say(typedPull(`pull ${index}`, torqueNm, { position: index + 1 }));
});
afterAll(() => shop.close());

describe('what was pulled on a joint', () => {
  it('is the last pull that stands on each position, between the limits of its step', async () => {
    const { body } = await shop.ask('GET', `/joints/${identity('bracket')}/revisions/1/pulls`);
    expect(body).toMatchObject({
      jobs: 1,
      steps: [{ stage: 1, round: 1, quantity: 'torque', lower: 38, upper: 46 }],
    });
    expect(body).toMatchObject({ steps: [{ values: expect.arrayContaining([41.5, 43, 42.4]) }] });
    expect(body).not.toMatchObject({ steps: [{ values: expect.arrayContaining([60]) }] });
  });

  it('is nothing on a revision that no job holds', async () => {
    const { body } = await shop.ask('GET', `/joints/${identity('bracket')}/revisions/7/pulls`);
    expect(body).toEqual({ steps: [], jobs: 0 });
  });
});
