import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import {
  aWrench,
  bracketContent,
  identity,
  jobOnBracket,
  takeWrench,
  typedPull,
  type Workshop,
  workshop,
} from '../testing/workshop.ts';

let shop: Workshop;
let jobId: string;
let technician: string;
let lead: string;
beforeAll(async () => {
  shop = await workshop();
  jobId = await jobOnBracket(shop);
  technician = await shop.signIn('technician');
  lead = await shop.signIn('lead');
  await takeWrench(shop, jobId, aWrench('0100'), technician);
});
afterAll(() => shop.close());

const work = (command: unknown) => shop.ask('POST', `/jobs/${jobId}/commands`, { command }, technician);

describe('what is refused names the field, and what it wants', () => {
  it.each([
    ['an unknown thread', '/calc/fastener', { thread: 'M11.5' }, { field: 'thread' }],
    ['an unknown class', '/calc/fastener', { thread: 'M10', propertyClass: '9.7' }, { field: 'propertyClass' }],
    ['an unknown unit', '/calc/convert', { value: 1, from: 'stone', to: 'N.m' }, { field: 'from' }],
    ['a unit of another quantity', '/calc/convert', { value: 1, from: 'N.m', to: 'mm' }, { status: 400 }],
    [
      'a negative torque',
      '/calc/wrench-setting',
      { torqueNm: -5, leverMm: 400, adapterMm: 50, adapterAngleDeg: 0 },
      { field: 'torqueNm' },
    ],
    [
      'limits the wrong way about',
      '/calc/verdict',
      { quantities: [{ name: 'torque', value: 5, lower: 9, upper: 3 }] },
      { status: 400 },
    ],
    [
      'a field that is not known',
      '/calc/convert',
      { value: 1, from: 'N.m', to: 'N.m', decimals: 2 },
      { field: 'decimals' },
    ],
    ['a number that is text', '/calc/convert', { value: '1,234', from: 'N.m', to: 'N.m' }, { field: 'value' }],
    [
      'JSON that ends too early',
      '/calc/convert',
      '{"value": 1,',
      { field: '(whole input)', expected: 'a JSON document in UTF-8' },
    ],
  ])('%s', async (_what, path, body, told) => {
    const answer = await shop.ask('POST', path, body);
    expect(answer.status).toBe(400);
    expect(answer.headers.get('content-type')).toBe('application/problem+json');
    expect(answer.body).toMatchObject({ status: 400, type: 'urn:problem-type:invalid', ...told });
  });

  it('a torque that is a slip of the unit, with the likely slip', async () => {
    const answer = await work(typedPull('slip', 4200));
    expect(answer.body).toMatchObject({ status: 400, field: 'shownTorqueNm' });
    expect(answer.text).toContain('lbf·in');
  });

  it('a position that the joint has not', async () => {
    expect((await work(typedPull('position 5', 42, { position: 5 }))).body).toMatchObject({
      status: 400,
      field: 'position',
      expected: 'a whole number from 1 to 4',
    });
  });

  it('a wrench that was not taken for the job', async () => {
    expect((await work(typedPull('other wrench', 42, { wrenchId: identity('another wrench') }))).body).toMatchObject({
      status: 400,
      field: 'wrenchId',
    });
  });

  it('a wrench that nobody knows', async () => {
    const answer = await work({ kind: 'take-tool', wrenchId: identity('unheard of'), jointRefs: ['J1'] });
    expect(answer.body).toMatchObject({ status: 404, type: 'urn:problem-type:not-found', what: 'wrench' });
  });

  it('a job that is not there', async () => {
    expect((await shop.ask('GET', `/jobs/${identity('no job')}`)).body).toMatchObject({ status: 404, what: 'job' });
  });

  it('an identity that is none', async () => {
    expect((await shop.ask('GET', '/jobs/17')).body).toMatchObject({ status: 400, field: 'id' });
  });

  it('a joint with a contradiction, before its release', async () => {
    const id = identity('contradicting joint');
    const upsideDown = { ...bracketContent.stages[0]?.torque, lowerNm: 50, targetNm: 42, upperNm: 46 };
    const content = { ...bracketContent, stages: [{ ...bracketContent.stages[0], torque: upsideDown }] };
    expect((await shop.ask('POST', '/joints', { id, content }, lead)).status).toBe(200);
    expect((await shop.ask('POST', `/joints/${id}/release`, undefined, lead)).body).toMatchObject({
      status: 400,
      type: 'urn:problem-type:invalid',
    });
  });

  it('a draft, of which no job is made', async () => {
    const jointId = identity('draft joint');
    await shop.ask('POST', '/joints', { id: jointId, content: bracketContent }, lead);
    const asset = { id: identity('tower 4'), name: 'Tower 4', location: '' };
    const made = await shop.ask(
      'POST',
      '/jobs',
      {
        id: identity('job of a draft'),
        title: 'Too early',
        asset,
        joints: [{ jointId, revision: 1, label: 'Bracket' }],
      },
      lead,
    );
    expect(made.body).toMatchObject({ status: 400, field: 'joints[0]' });
    expect((await shop.ask('GET', `/jobs/${identity('job of a draft')}`)).status).toBe(404);
  });

  it('a body that is larger than agreed', async () => {
    const answer = await shop.ask('POST', '/people', { name: 'x'.repeat(2 ** 20), role: 'lead', pin: '1234' }, lead);
    expect(answer.body).toMatchObject({ status: 413 });
  });

  it('a route that is not there', async () => {
    expect((await shop.ask('GET', '/calc/guesswork')).body).toMatchObject({
      status: 404,
      type: 'urn:problem-type:not-found',
    });
    expect((await shop.ask('PUT', '/jobs')).body).toMatchObject({ status: 404 });
  });
});

describe('an array of inputs', () => {
  it('gives an array, with the error in the place of what is refused', async () => {
    const answer = await shop.ask('POST', '/calc/convert', [
      { value: 1, from: 'in', to: 'mm' },
      { value: 1, from: 'stone', to: 'mm' },
    ]);
    expect(answer.status).toBe(200);
    expect(answer.body).toMatchObject([{ value: 25.4 }, { error: { kind: 'invalid', field: 'from' } }]);
  });
});

describe('what happens twice, or at once', () => {
  it('stores the same pull once', async () => {
    const pull = typedPull('same', 42, { position: 1 });
    const first = await work(pull);
    const second = await work(pull);
    expect(first.body).toMatchObject({ already: false });
    expect(second.body).toMatchObject({ already: true, entries: [{ id: pull.id }] });
  });

  it('refuses another pull under the same identity', async () => {
    await work(typedPull('taken', 42, { position: 2 }));
    const answer = await work(typedPull('taken', 44, { position: 2 }));
    expect(answer.body).toMatchObject({ status: 409, current: { kind: 'pull' } });
  });

  it('lets the first of two browsers on one position have it, and shows the second what stands there', async () => {
    const both = ['left', 'right'].map((word) => work(typedPull(`browser ${word}`, 42, { position: 3, attempt: 1 })));
    const answers = await Promise.all(both);
    expect(answers.map(({ status }) => status).toSorted((a, b) => a - b)).toEqual([200, 409]);
    expect(answers.find(({ status }) => status === 409)?.body).toMatchObject({
      type: 'urn:problem-type:conflict',
      current: { cell: { position: 3 }, attemptCount: 1, last: { verdict: 'within' } },
    });
  });

  it('makes the same job once', async () => {
    const again = await jobOnBracket(shop);
    expect(again).toBe(jobId);
  });

  it('holds the time of an entry when the clock jumps back, and keeps what the clock said', async () => {
    await work({ kind: 'note', text: 'Before the jump.' });
    shop.wait(-3_600_000);
    const answer = await work({ kind: 'note', text: 'After the jump.' });
    shop.wait(3_600_000);
    expect(answer.body).toMatchObject({
      entries: [{ at: '2026-03-02T06:00:00.000Z', clockSaid: '2026-03-02T05:00:00.000Z' }],
    });
  });

  it('adds nothing to a closed job', async () => {
    await work(typedPull('last', 42, { position: 4 }));
    await work({ kind: 'sign-off', statement: 'All of them are tight.' });
    expect((await work({ kind: 'close' })).status).toBe(200);
    const answer = await work(typedPull('too late', 42));
    expect(answer.body).toMatchObject({ status: 409, current: { status: 'closed' } });
    expect(answer.text).toContain('closed and sealed');
  });
});
