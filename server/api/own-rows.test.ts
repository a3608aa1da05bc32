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

const rod = {
  id: identity('rod'),
  kind: 'bolt',
  name: 'Tie rod 23',
  source: 'Drawing KH-114, measured on 4 rods',
  majorDiameterMm: 23,
  pitchMm: 2,
  holeMm: 25,
  bearingOuterMm: 34,
};

it('may be a bolt, which calculations then take by its dimensions', async () => {
  expect((await post(rod)).status).toBe(201);
  expect(await list()).toMatchObject([{ ...rod, system: 'ISO metric' }]);
  const thread = { designation: rod.name, majorDiameterMm: 23, pitchMm: 2, holeMm: 25, bearingOuterMm: 34 };
  const input = { thread, propertyClass: '8.8', threadFriction: 0.12, bearingFriction: 0.12 };
  expect((await shop.ask('POST', '/calc/assembly-torque', input, lead)).body).toMatchObject({
    bearingOuterMm: 34,
    holeMm: 25,
    warnings: [{ field: 'thread' }, { field: 'propertyClass' }],
  });
});

it('may be named in calculations', async () => {
  await post(rod);
  await post(paste);
  const named = { thread: 'Tie rod 23', propertyClass: '8.8', lubricant: 'Assembly paste' };
  const thread = { designation: rod.name, majorDiameterMm: 23, pitchMm: 2, holeMm: 25, bearingOuterMm: 34 };
  const told = { thread, propertyClass: '8.8', threadFriction: 0.1, bearingFriction: 0.09 };
  const answer = async (input: unknown) => (await shop.ask('POST', '/calc/assembly-torque', input)).body;
  expect(await answer(named)).toMatchObject({ bearingOuterMm: 34 });
  expect(await answer(named)).toEqual(await answer(told));
  expect(await answer([told, { ...named, lubricant: 'grease' }])).toMatchObject([
    {},
    { error: { field: 'lubricant', expected: 'one of Assembly paste' } },
  ]);
});

it.each([
  [{ pitchMm: 30 }, 'pitchMm', 'less than'],
  [{ minorDiameterMm: 24 }, 'minorDiameterMm', 'less than 23 mm'],
  [{ bearingOuterMm: 24.5 }, 'bearingOuterMm', 'more than 25 mm'],
  [{ name: 'M24' }, 'name', 'a designation that nothing else has'],
  [{ source: ' ' }, 'source', 'at least 1 character'],
])('is refused as a bolt that cannot be: %j', async (wrong, field, expected) => {
  expect((await post({ ...rod, ...wrong })).body).toMatchObject({
    status: 400,
    field,
    expected: expect.stringContaining(expected),
  });
});

it('is refused a designation that another bolt has', async () => {
  await post(rod);
  expect((await post({ ...rod, id: identity('rod again') })).body).toMatchObject({ status: 400, field: 'name' });
  expect((await post({ ...rod, id: identity('rod again'), supersedes: rod.id })).status).toBe(201);
});

it('superseded by two people at once, is superseded by one; the other is told what to do', async () => {
  await post(paste);
  const both = await Promise.all([
    post(newer),
    post({ ...newer, id: identity('third'), source: 'Own test of 10 March' }),
  ]);
  expect(both.map(({ status }) => status).toSorted((a, b) => a - b)).toEqual([201, 409]);
  const refused = both.find(({ status }) => status === 409);
  expect(refused?.body).toMatchObject({ detail: expect.stringContaining('supersede that one') });
  expect(await list()).toHaveLength(2);
});
