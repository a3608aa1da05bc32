import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { learnedFor, learnedForAll } from './learned-traces.ts';
import {
  aWrench,
  have,
  identity,
  jobOnBracket,
  takeWrench,
  tower,
  type Workshop,
  workshop,
} from './testing/workshop.ts';

let shop: Workshop;
let first: string;
let second: string;
beforeAll(async () => {
  shop = await workshop();
  const technician = await shop.signIn('technician');
  first = await jobOnBracket(shop);
  second = await anotherJob();
  await takeWrench(shop, first, aWrench('simulated', { kind: 'simulated', seed: 5 }), technician);
  for (const position of [1, 2, 3, 4])
    await shop.ask('POST', `/jobs/${first}/simulate`, { jointRef: 'J1', position }, technician);
  await shop.ask('POST', `/jobs/${first}/simulate`, { jointRef: 'J1', position: 2, fault: 'over-run' }, technician);
});
afterAll(() => shop.close());

const trace = { timeS: [0, 1], angleDeg: [0, 1], torqueNm: [0, 1] };

/** A second job on the same revision of the bracket. */
async function anotherJob(): Promise<string> {
  const lead = await shop.signIn('lead');
  const joints = [{ jointId: identity('bracket'), revision: 1, label: 'Sensor bracket' }];
  const job = { id: identity('another job'), title: 'Sensor of tower 3, once more', asset: tower, joints };
  const made = await shop.ask('POST', '/jobs', job, lead);
  if (made.status !== 201) throw new Error(made.text);
  return job.id;
}

describe('what other jobs have taught', () => {
  it('is the figures of their accepted traces, step by step, and none that was refused', async () => {
    const { learnedFigures } = await asked(second);
    expect(Object.keys(learnedFigures)).toEqual(['1/1']);
    const accepted = learnedFigures['1/1'] ?? [];
    expect(accepted.length).toBeGreaterThan(2);
    expect(accepted.length).toBeLessThanOrEqual(4);
    for (const { slopeNmPerDeg } of accepted) expect(slopeNmPerDeg).toBeGreaterThan(0);
  });

  it('is not what the job itself has: that is in its state', async () => {
    const { learnedFigures } = await asked(first);
    // the other job has had no pull yet
    expect(learnedFigures).toEqual({ '1/1': [] });
  });

  it('is looked up once for many pulls on one joint, and not for those without a trace', async () => {
    let asks = 0;
    const withJoint: typeof shop.store.jobs.withJoint = (joint, most) => {
      asks++;
      return shop.store.jobs.withJoint(joint, most);
    };
    const jobs = { ...shop.store.jobs, withJoint };
    const many = Array.from({ length: 50 }, () => ({ jointRef: 'J1', trace }));
    const learned = have(await learnedForAll({ store: { ...shop.store, jobs } }, second, many));
    expect(asks).toBe(1);
    expect(learned.get('J1')).toEqual((await asked(second)).learnedFigures);
    expect(have(await learnedForAll(shop.deps, second, [{ jointRef: 'J1', trace: undefined }])).size).toBe(0);
  });

  it('is nothing for a pull without a trace', async () => {
    expect(have(await learnedFor(shop.deps, second, { ...typed(), trace: undefined }))).toBeUndefined();
  });
});

const typed = () => ({
  kind: 'record-pull' as const,
  id: identity('learner'),
  jointRef: 'J1',
  source: { kind: 'typed' as const },
  takenAt: '2026-05-04T09:00:00.000Z',
  shown: { torque: { text: '40', unit: 'N·m' } },
  shownTorqueNm: 40,
  trace,
});

async function asked(jobId: string) {
  return { learnedFigures: have(await learnedFor(shop.deps, jobId, typed())) ?? {} };
}
