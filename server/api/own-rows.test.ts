import { ownRowSchema } from '@clampwright/core/fastener';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { z } from 'zod';
import { identity, type Workshop, workshop } from '../testing/workshop.ts';

let shop: Workshop;
let lead: string;
beforeEach(async () => {
  shop = await workshop();
  lead = await shop.signIn('lead');
});
afterEach(() => shop.close());

const paste = {
  id: identity('paste'),
  kind: 'lubricant',
  name: 'Assembly paste',
  source: 'Own test of 2 March, 12 bolts M12',
  threadFriction: { lower: 0.1, upper: 0.12 },
  bearingFriction: { lower: 0.09, upper: 0.12 },
};
const newer = { ...paste, id: identity('paste again'), source: 'Own test of 9 March', supersedes: paste.id };
const post = (row: object) => shop.ask('POST', '/own-rows', row, lead);
const list = async () => z.array(ownRowSchema).parse((await shop.ask('GET', '/own-rows')).body);

it('is kept with who added it and when', async () => {
  expect((await post(paste)).status).toBe(201);
  expect(await list()).toEqual([
    { ...paste, by: { id: identity('person lead'), name: 'The lead' }, addedAt: expect.stringMatching(/^2026-03-02T/) },
  ]);
});

it('sent twice is kept once; other figures under its identity are refused', async () => {
  await post(paste);
  shop.wait(60_000);
  expect((await post(paste)).status).toBe(201);
  expect((await post({ ...paste, name: 'Another paste' })).status).toBe(409);
  expect(await list()).toMatchObject([{ name: 'Assembly paste' }]);
});

it('is superseded by another and stays as it was', async () => {
  await post(paste);
  expect((await post(newer)).status).toBe(201);
  expect(await list()).toMatchObject([{ source: paste.source }, { source: newer.source, supersedes: paste.id }]);
});

it('is superseded once, and only by its kind', async () => {
  await post(paste);
  const stud = {
    kind: 'material',
    name: 'Stud',
    source: 'Certificate',
    yieldStrengthMPa: 700,
    tensileStrengthMPa: 860,
  };
  expect((await post({ ...stud, id: identity('stud'), supersedes: paste.id })).status).toBe(404);
  await post(newer);
  expect((await post({ ...newer, id: identity('third') })).body).toMatchObject({
    status: 409,
    current: { source: newer.source },
  });
});

it('is refused without a source, naming the field', async () => {
  expect((await post({ ...paste, source: '' })).body).toMatchObject({ status: 400, field: 'source' });
});
