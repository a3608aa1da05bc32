import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import {
  aWrench,
  cookieIn,
  have,
  identity,
  jobOnBracket,
  PIN,
  personId,
  takeWrench,
  typedPull,
  type Workshop,
  workshop,
} from '../testing/workshop.ts';

let shop: Workshop;
let jobId: string;
let technician: string;
beforeEach(async () => {
  shop = await workshop();
  jobId = await jobOnBracket(shop);
  technician = await shop.signIn('technician');
});
afterEach(() => shop.close());

const word = { personId: personId('lead'), pin: PIN };
const work = (command: unknown, lead?: unknown) =>
  shop.ask('POST', `/jobs/${jobId}/commands`, { command, lead }, technician);

describe('a wrench that something speaks against', () => {
  const overdue = { ...aWrench('0300'), calibration: { ...aWrench('0300').calibration!, dueOn: '2026-02-01' } };
  const take = { kind: 'take-tool', wrenchId: overdue.id, jointRefs: ['J1'] };
  beforeEach(async () => have(await shop.store.wrenches.add(overdue)));

  it('is refused with what speaks against it', async () => {
    const { status, body } = await work(take);
    expect(status).toBe(409);
    expect(body).toMatchObject({ current: { objections: [expect.stringMatching(/calibration/i)] } });
  });

  it('is not taken on the technician’s own word', async () => {
    expect((await work({ ...take, exceptionReason: 'No other one is here.' })).status).toBe(409);
  });

  it('is taken on the lead’s word and reason, which stay in the record', async () => {
    const { body } = await work({ ...take, exceptionReason: 'No other one is here.' }, word);
    expect(body).toMatchObject({
      entries: [
        {
          by: { role: 'technician' },
          body: { kind: 'tool-taken', exception: { by: { name: 'The lead' }, reason: 'No other one is here.' } },
        },
      ],
    });
  });
});

describe('mending', () => {
  const firstPull = typedPull('first', 35, { position: 1 });
  beforeEach(async () => {
    await takeWrench(shop, jobId, aWrench('0100'), technician);
    await work(firstPull);
  });

  it('moves the last pull to its right position and judges it there; it stays in sight where it was', async () => {
    const to = { jointRef: 'J1', stage: 1, round: 1, position: 2 };
    const { body } = await work({ kind: 'move-pull', pullId: firstPull.id, to, reason: 'It was the bolt beside.' });
    expect(body).toMatchObject({
      entries: [
        { body: { kind: 'pull-moved', from: { position: 1 }, to: { position: 2 }, judgement: { verdict: 'under' } } },
      ],
    });
  });

  it('accepts a cell on the lead’s word alone', async () => {
    const accept = {
      kind: 'accept',
      cell: { jointRef: 'J1', stage: 1, round: 1, position: 1 },
      reason: 'Enough for this bracket.',
    };
    expect((await work(accept)).body).toMatchObject({ status: 403, needs: 'lead' });
    expect((await work(accept, word)).body).toMatchObject({
      entries: [{ body: { kind: 'accepted', exception: { by: { name: 'The lead' } } } }],
    });
  });

  it('keeps the trace of a pull, every digit of it', async () => {
    const trace = { timeS: [0, 0.1, 0.2], angleDeg: [0, 10.5, 21], torqueNm: [0.125, 20.25, 42.1] };
    await work(typedPull('traced', 42.1, { position: 2, trace }));
    expect(have(await shop.store.jobs.trace(identity('traced')))).toEqual(trace);
  });
});

describe('somebody of the demonstration', () => {
  it('does not work on a job of the workshop’s own', async () => {
    const { pinHash } = have(await shop.store.people.get(personId('technician')));
    have(
      await shop.store.people.add(
        { id: identity('demo'), name: 'Demo Hand', role: 'technician', pinHash },
        { demo: true },
      ),
    );
    const cookie = cookieIn((await shop.ask('POST', '/session', { personId: identity('demo'), pin: PIN })).headers);
    const answer = await shop.ask(
      'POST',
      `/jobs/${jobId}/commands`,
      { command: { kind: 'note', text: 'Not mine.' } },
      cookie,
    );
    expect(answer.body).toMatchObject({ status: 403, type: 'urn:problem-type:demonstration-only' });
  });
});
