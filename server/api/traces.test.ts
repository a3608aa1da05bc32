import { beforeAll, describe, expect, it } from 'vitest';
import { aWrench, bracketContent, have, identity, tower, type Workshop, workshop } from '../testing/workshop.ts';
import { MOST_EARLIER, POINTS_EACH } from '../traces/earlier-traces.ts';
import { type EarlierTraces, earlierTracesSchema } from './contract.ts';

let shop: Workshop;
let jobId: string;
let technician: string;
/** What the third pull of all is drawn over. */
let early: EarlierTraces;
const PULLS = MOST_EARLIER + 5;

beforeAll(async () => {
  shop = await workshop();
  technician = await shop.signIn('technician');
  jobId = await ringTwice();
  await takeForBoth();
  for (let pull = 1; pull <= PULLS; pull++) {
    await simulate(pull);
    if (pull === 3) early = await earlierOf(await lastSeq());
  }
  return () => shop.close();
});

/** A job with the same ring of two hundred bolts twice, so that its step can have more pulls than are drawn. */
async function ringTwice(): Promise<string> {
  const lead = await shop.signIn('lead');
  const jointId = identity('ring');
  const layout = { kind: 'circle', count: 200, diameterMm: 5000, firstAngleDeg: 0, direction: 'clockwise' };
  await shop.ask('POST', '/joints', { id: jointId, content: { ...bracketContent, layout } }, lead);
  await shop.ask('POST', `/joints/${jointId}/release`, undefined, lead);
  const joints = ['left', 'right'].map((label) => ({ jointId, revision: 1, label }));
  const job = { id: identity('ring job'), title: 'Two rings', asset: tower, joints };
  const made = await shop.ask('POST', '/jobs', job, lead);
  if (made.status !== 201) throw new Error(made.text);
  return job.id;
}

async function takeForBoth(): Promise<void> {
  const wrench = aWrench('simulated', { kind: 'simulated', seed: 5 });
  have(await shop.store.wrenches.add(wrench));
  const command = { kind: 'take-tool', wrenchId: wrench.id, jointRefs: ['J1', 'J2'] };
  await shop.ask('POST', `/jobs/${jobId}/commands`, { command }, technician);
}

async function simulate(pull: number): Promise<void> {
  const place = pull > 200 ? { jointRef: 'J2', position: pull - 200 } : { jointRef: 'J1', position: pull };
  const done = await shop.ask('POST', `/jobs/${jobId}/simulate`, place, technician);
  if (done.status !== 200) throw new Error(done.text);
}

async function earlierOf(seq: number) {
  const { body } = await shop.ask('GET', `/jobs/${jobId}/entries/${seq}/earlier-traces`);
  return earlierTracesSchema.parse(body);
}

/** The last pull of all; its entry is the last of the job. */
async function lastSeq(): Promise<number> {
  return have(await shop.store.jobs.state(jobId)).lastSeq;
}

describe('what a pull is drawn over', () => {
  it('is the accepted traces of its step, never its own', () => {
    expect(early.curves).toHaveLength(2);
  });

  it('is two hundred of them and no more, each thinned', async () => {
    const { curves } = await earlierOf(await lastSeq());
    expect(curves).toHaveLength(MOST_EARLIER);
    expect(Math.max(...curves.map(({ torqueNm }) => torqueNm.length))).toBeLessThanOrEqual(POINTS_EACH);
  });
});
