import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { aWrench, identity, jobOnBracket, takeWrench, type Workshop, workshop } from '../testing/workshop.ts';
import type { LiveEvent } from './contract.ts';

let shop: Workshop;
let jobId: string;
let technician: string;
beforeAll(async () => {
  shop = await workshop();
  jobId = await jobOnBracket(shop);
  technician = await shop.signIn('technician');
});
afterAll(() => shop.close());

const pull = (asked: unknown) => shop.ask('POST', `/jobs/${jobId}/simulate`, asked, technician);

describe('the simulated wrench', () => {
  it('is taken first', async () => {
    expect((await pull({ jointRef: 'J1' })).body).toMatchObject({ status: 409 });
  });

  it('does not stand in for a real one', async () => {
    await takeWrench(shop, jobId, aWrench('0100'), technician);
    const answer = await pull({ jointRef: 'J1' });
    expect(answer.body).toMatchObject({ status: 409 });
    expect(answer.text).toContain('Wrench 0100');
  });

  it('pulls on the next position, and says where the pull is from', async () => {
    await takeWrench(shop, jobId, aWrench('simulated', { kind: 'simulated', seed: 5 }), technician);
    const answer = await pull({ jointRef: 'J1' });
    expect(answer.body).toMatchObject({
      entries: [
        {
          body: {
            kind: 'pull',
            pull: { cell: { position: 1 }, source: { kind: 'simulated' }, trace: {} },
            judgement: { verdict: 'within' },
          },
        },
      ],
    });
  });

  it('pulls on the position that is named, with the fault that is asked for', async () => {
    const answer = await pull({ jointRef: 'J1', position: 3, fault: 'stopped-short' });
    expect(answer.body).toMatchObject({
      entries: [{ body: { pull: { cell: { position: 3 } }, judgement: { verdict: 'under' } } }],
    });
  });

  it('shows the torque to whoever looks, then the news of the entry', async () => {
    const heard: LiveEvent[] = [];
    const stop = shop.deps.listeners.listen(jobId, (event) => heard.push(event));
    await pull({ jointRef: 'J1', position: 2 });
    stop?.();
    expect(heard.at(-1)).toMatchObject({ kind: 'entries' });
    const torques = heard.flatMap((event) => (event.kind === 'torque' ? [event.torqueNm] : []));
    expect(torques.length).toBeGreaterThan(5);
    expect(torques.length).toBeLessThanOrEqual(40);
    expect(Math.max(...torques)).toBeGreaterThan(35);
  });

  it('refuses a joint and a position that are not there', async () => {
    expect((await pull({ jointRef: 'J7' })).body).toMatchObject({ status: 400, field: 'jointRef' });
    expect((await pull({ jointRef: 'J1', position: 9 })).body).toMatchObject({ status: 400, field: 'position' });
    expect(
      (await shop.ask('POST', `/jobs/${identity('no job')}/simulate`, { jointRef: 'J1' }, technician)).status,
    ).toBe(404);
  });
});
