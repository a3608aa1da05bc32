import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { ok } from '@clampwright/core/failure';
import type { Entry } from '@clampwright/core/record';
import { ASSUMPTIONS, type Assumption, type ErrorPoint, type Recall, type Wrench } from '@clampwright/core/wrench';
import { openStore, type Store } from '@clampwright/store';
import {
  deciding,
  firstEntries,
  hubSheet,
  identity,
  instant,
  lead,
  pullNumber,
  wrench,
} from '@clampwright/store/testing';
import * as fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { have } from '../testing/workshop.ts';
import { recallShown } from './recall-pulls.ts';

let folder: string;
let store: Store;
let round = 0;

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'clampwright-recall-'));
  store = have(await openStore(folder));
});
afterAll(async () => {
  await store.close();
  await rm(folder, { recursive: true });
});

/** Three wrenches, three jobs; what is refused (a pull on a position that is done) is simply not there. */
const act = fc.oneof(
  {
    weight: 8,
    arbitrary: fc.record({
      kind: fc.constant('pull'),
      second: fc.nat(900),
      arrival: fc.nat(900),
      torque: fc.integer({ min: 240, max: 360 }),
    }),
  },
  { weight: 2, arbitrary: fc.record({ kind: fc.constant('tool'), wrench: fc.nat(2), lever: fc.boolean() }) },
  { weight: 1, arbitrary: fc.record({ kind: fc.constant('aside'), which: fc.nat(50) }) },
  {
    weight: 1,
    arbitrary: fc.record({ kind: fc.constant('move'), which: fc.nat(50), position: fc.integer({ min: 1, max: 6 }) }),
  },
);
const acts = fc.array(fc.tuple(fc.nat(2), act), { minLength: 30, maxLength: 60, size: 'max' });
const points = (least: number) =>
  fc.uniqueArray(
    fc.record({
      torqueNm: fc.integer({ min: 20, max: 40 }),
      deviationPercent: fc.integer({ min: -200, max: 200 }).map((tenths) => tenths / 10),
      standardUncertaintyPercent: fc.constantFrom(0.2, 0.5, 1),
    }),
    { selector: ({ torqueNm }) => torqueNm, minLength: least, maxLength: 4 },
  );
const doubt = fc.record({
  wrench: fc.nat(2),
  good: fc.option(fc.nat(300), { nil: undefined }),
  span: fc.integer({ min: 100, max: 1000 }),
  before: points(0),
  found: points(1),
});

describe('a recall', () => {
  it('finds exactly the pulls that a slow scan of every entry finds, worth the same under each assumption', async () => {
    let found = 0;
    await fc.assert(
      fc.asyncProperty(acts, doubt, async (done, { wrench: of, good, span, before, found: errors }) => {
        round += 1;
        const wrenches = await workedWith(done);
        const recall: Recall = {
          id: identity(`recall ${round}`),
          wrenchId: wrenches[of]?.id ?? '',
          raisedAt: instant(5000),
          by: 'the keeper',
          cause: { kind: 'dropped', what: 'fell from the ladder' },
          ...(good === undefined ? {} : { goodAt: instant(good) }),
          foundAt: instant((good ?? 0) + span),
          before,
          found: errors,
        };
        have(await store.care.recalls.append(recall));
        const slow = await slowly(recall);
        found += slow.length;
        for (const assumption of ASSUMPTIONS) {
          const { lines } = have(await recallShown(store, recall.id, assumption));
          const worth = new Map(slow.map((pull) => [pull.id, pull.torqueNm[assumption]]));
          expect(lines.map(({ pull }) => pull.pullId).toSorted()).toEqual([...worth.keys()].toSorted());
          for (const { pull, under } of lines)
            expect(under[assumption].torqueNm).toBeCloseTo(worth.get(pull.pullId) ?? Number.NaN, 9);
          const chances = lines.map(({ under }) => under[assumption].outside);
          expect(chances).toEqual(chances.toSorted((a, b) => b - a));
        }
      }),
      { seed: 24, numRuns: 40 },
    );
    // it was no comparison of nothing with nothing
    expect(found).toBeGreaterThan(80);
  });
});

/** Does it all in jobs of this round, with wrenches of this round. */
async function workedWith(done: readonly (readonly [number, Act])[]): Promise<readonly Wrench[]> {
  const wrenches = [0, 1, 2].map((n) => ({
    ...wrench,
    id: identity(`wrench ${round} ${n}`),
    serial: `KH-${round}-${n}`,
  }));
  for (const one of wrenches) have(await store.wrenches.add(one));
  const jobs = [0, 1, 2].map((n) => hubSheet(`round ${round} ${n}`));
  for (const sheet of jobs) have(await store.jobs.open(firstEntries(sheet)));
  for (const [n, { id }] of jobs.entries())
    await acted(id, 900 + n, { kind: 'tool', wrench: n, lever: false }, wrenches);
  for (const [n, [job, one]] of done.entries()) {
    const jobId = jobs[job]?.id ?? '';
    await acted(jobId, n, one, wrenches);
  }
  return wrenches;
}

type Act = typeof act extends fc.Arbitrary<infer One> ? One : never;

async function acted(jobId: string, n: number, one: Act, wrenches: readonly Wrench[]): Promise<void> {
  const draft = (body: Entry['body']) => [{ id: identity(`${jobId} ${n}`), at: instant(1000 + n), by: lead, body }];
  if ('torque' in one) {
    const torqueNm = one.torque / 10;
    const change = {
      takenAt: instant(one.second),
      shown: { torque: { text: String(torqueNm), unit: 'N·m' } },
      shownTorqueNm: torqueNm,
    } as const;
    await store.jobs.append(jobId, deciding(pullNumber(jobId, n, change), one.arrival));
  } else if ('lever' in one) {
    const taken = wrenches[one.wrench] ?? wrench;
    const adapter = { id: identity('adapter'), name: 'Open end', lengthMm: 45, angleDeg: 0 };
    const body: Entry['body'] = {
      kind: 'tool-taken',
      tool: one.lever ? { wrench: taken, adapter } : { wrench: taken },
      jointRefs: ['J1', 'J2'],
      objections: [],
    };
    have(await store.jobs.append(jobId, () => ok(draft(body))));
  } else {
    const pulls = (await pullsIn(jobId)).filter(({ isAside }) => !isAside);
    const pull = pulls[one.which % Math.max(1, pulls.length)];
    if (!pull) return;
    const from = { jointRef: pull.jointRef, stage: 1, round: 1, position: pull.position };
    const body: Entry['body'] =
      'position' in one
        ? {
            kind: 'pull-moved',
            pullId: pull.id,
            from,
            to: { ...from, position: one.position },
            reason: 'miscounted',
            judgement: { verdict: 'within', reasons: [] },
          }
        : { kind: 'pull-set-aside', pullId: pull.id, cell: from, reason: 'not ours' };
    have(await store.jobs.append(jobId, () => ok(draft(body))));
  }
}

interface Scanned {
  readonly id: string;
  readonly wrenchId: string;
  readonly at: string;
  readonly jointRef: string;
  readonly position: number;
  readonly isAside: boolean;
  readonly torqueNm: number;
  readonly shownNm: number;
}

/** Every pull of a job, read from its entries one by one, with no index and no state. */
async function pullsIn(jobId: string): Promise<readonly Scanned[]> {
  const entries = have(await store.jobs.entries(jobId));
  return entries.flatMap(({ id, at, body }, index) => {
    if (body.kind !== 'pull') return [];
    const { wrenchId, takenAt, cell, reading } = body.pull;
    const moved = entries.flatMap((later) =>
      later.body.kind === 'pull-moved' && later.body.pullId === id ? [later.body.to.position] : [],
    );
    const isAside = entries.some(({ body: later }) => later.kind === 'pull-set-aside' && later.pullId === id);
    const tool = entries
      .slice(0, index)
      .flatMap((before) => (before.body.kind === 'tool-taken' ? [before.body.tool] : []))
      .findLast((taken) => taken.wrench.id === wrenchId);
    const lever = tool?.wrench.leverMm ?? 1;
    const factor = (lever + (tool?.adapter?.lengthMm ?? 0)) / lever;
    const { torqueNm } = reading;
    return [
      {
        id,
        wrenchId,
        at: takenAt < at ? takenAt : at,
        jointRef: cell.jointRef,
        position: moved.at(-1) ?? cell.position,
        isAside,
        torqueNm,
        shownNm: torqueNm / factor,
      },
    ];
  });
}

async function slowly({ wrenchId, goodAt, foundAt, before, found }: Recall) {
  const jobs = have(await store.jobs.list());
  const all = (await Promise.all(jobs.map(({ id }) => pullsIn(id)))).flat();
  const affected = all
    .filter((pull) => pull.wrenchId === wrenchId && !pull.isAside)
    .filter(({ at }) => (goodAt === undefined || at > goodAt) && at <= foundAt)
    .toSorted((a, b) => (a.at === b.at ? (a.id < b.id ? -1 : 1) : a.at < b.at ? -1 : 1));
  const begin = Date.parse(goodAt ?? affected[0]?.at ?? foundAt);
  const span = Date.parse(foundAt) - begin;
  return affected.map(({ id, at, torqueNm, shownNm }, index) => {
    const worth = (share: number): number => {
      const [was, is] = [errorAt(before, shownNm), errorAt(found, shownNm)];
      return torqueNm / (1 + (was + share * (is - was)) / 100);
    };
    const torques: Record<Assumption, number> = {
      'at-once': worth(1),
      'with-time': worth(span > 0 ? (Date.parse(at) - begin) / span : 1),
      'with-pulls': worth((index + 1) / affected.length),
    };
    return { id, torqueNm: torques };
  });
}

/** Straight between the points, flat beyond them. */
function errorAt(at: readonly ErrorPoint[], torqueNm: number): number {
  const sorted = at.toSorted((a, b) => a.torqueNm - b.torqueNm);
  const [first, last] = [sorted[0], sorted.at(-1)];
  if (!first || !last) return 0;
  if (torqueNm <= first.torqueNm) return first.deviationPercent;
  if (torqueNm >= last.torqueNm) return last.deviationPercent;
  const above = sorted.findIndex((point) => point.torqueNm >= torqueNm);
  const [low = first, high = last] = [sorted[above - 1], sorted[above]];
  const share = (torqueNm - low.torqueNm) / (high.torqueNm - low.torqueNm);
  return low.deviationPercent + share * (high.deviationPercent - low.deviationPercent);
}
