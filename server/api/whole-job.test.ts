import { entrySchema, verifyRecord } from '@clampwright/core/record';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { z } from 'zod';
import { aWrench, jobOnBracket, takeWrench, typedPull, type Workshop, workshop } from '../testing/workshop.ts';
import { commandResultSchema, jobListItemSchema, todaySchema } from './contract.ts';

let shop: Workshop;
beforeAll(async () => {
  shop = await workshop();
});
afterAll(() => shop.close());

describe('a job by the API, from its making to the verified record', () => {
  it('is worked on, signed off, closed, sealed, and verifies without the server', async () => {
    const { ask } = shop;
    const jobId = await jobOnBracket(shop);
    const technician = await shop.signIn('technician');
    const work = (command: unknown, lead?: unknown) =>
      ask('POST', `/jobs/${jobId}/commands`, { command, lead }, technician);
    await takeWrench(shop, jobId, aWrench('0100'), technician);

    const under = await work(typedPull('first', 30));
    expect(commandResultSchema.parse(under.body).entries[0]?.body).toMatchObject({
      kind: 'pull',
      judgement: { verdict: 'under' },
    });
    for (const word of ['first again', 'second', 'third', 'fourth']) {
      shop.wait(20_000);
      expect((await work(typedPull(word, 42.2))).status).toBe(200);
    }
    expect((await work({ kind: 'sign-off', statement: 'All bolts of the bracket are tight.' })).status).toBe(200);
    expect((await work({ kind: 'close' })).status).toBe(200);

    const record = await ask('GET', `/jobs/${jobId}/record.json`);
    expect(record.headers.get('content-disposition')).toMatch(
      /^attachment; filename="2026-03-02_tower-3_sensor-of-tower-3_[0-9a-f]{8}\.json"$/,
    );
    expect(verifyRecord(record.text)).toMatchObject({ whole: true, sealed: true, faults: [], entryCount: 9 });
    expect(verifyRecord(record.text.replace('All bolts', 'Most bolts')).whole).toBe(false);

    const entries = z.array(entrySchema).parse((await ask('GET', `/jobs/${jobId}/entries?after=6`)).body);
    expect(entries.map(({ body }) => body.kind)).toEqual(['pull', 'signed-off', 'closed']);
    expect(z.array(jobListItemSchema).parse((await ask('GET', '/jobs?status=closed')).body)).toMatchObject([
      { id: jobId, done: 4, total: 4 },
    ]);
    expect(todaySchema.parse((await ask('GET', '/today')).body)).toMatchObject({
      jobs: [],
      retorques: [{ jobId, after: 30, unit: 'd' }],
    });
  });
});
