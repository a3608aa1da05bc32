import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { PullInDoubt, Recall } from './recall.ts';
import { followed, pullsInDoubt, rejudged } from './rejudge.ts';

fc.configureGlobal({ seed: 24 });

const WRENCH = '00000000-0000-4000-8000-000000000001';
const OTHER = '00000000-0000-4000-8000-000000000002';
const DAY_MS = 86_400_000;
const BEGIN = Date.parse('2026-03-01T00:00:00.000Z');
const onDay = (day: number) => new Date(BEGIN + day * DAY_MS).toISOString();
const uuid = (n: number) => `00000000-0000-4000-8000-${String(n).padStart(12, '0')}`;

const aPull = (n: number, day: number, more: Partial<PullInDoubt> = {}): PullInDoubt => ({
  pullId: uuid(n),
  wrenchId: WRENCH,
  takenAt: onDay(day),
  job: { id: uuid(900), title: 'Valley station' },
  asset: 'Sheave 4',
  jointRef: 'J1',
  joint: 'Hub flange',
  stage: 1,
  round: 1,
  position: n,
  torqueNm: 100,
  shownNm: 100,
  lowerNm: 96,
  upperNm: 104,
  expandedUncertaintyNm: 2,
  ...more,
});

const aRecall = (more: Partial<Recall> = {}): Recall => ({
  id: uuid(800),
  wrenchId: WRENCH,
  raisedAt: onDay(100),
  by: 'the keeper',
  cause: { kind: 'dropped', what: 'Fell from the platform.' },
  goodAt: onDay(0),
  foundAt: onDay(100),
  before: [],
  found: [
    { torqueNm: 40, deviationPercent: 4, standardUncertaintyPercent: 0.5 },
    { torqueNm: 200, deviationPercent: 12, standardUncertaintyPercent: 0.5 },
  ],
  ...more,
});

describe('pulls in doubt', () => {
  const day = fc.integer({ min: 0, max: 40 });
  const pulls = fc.array(fc.record({ day, isOurs: fc.boolean() }), { maxLength: 60 });

  it('are exactly those that a slow look at every pull finds', () => {
    fc.assert(
      fc.property(pulls, fc.option(day, { nil: undefined }), day, (made, good, found) => {
        const byTime = made
          .map(({ day: on, isOurs }, n) => aPull(n, on, { wrenchId: isOurs ? WRENCH : OTHER }))
          .toSorted((a, b) => (a.takenAt < b.takenAt ? -1 : a.takenAt > b.takenAt ? 1 : 0));
        const goodAt = good === undefined ? {} : { goodAt: onDay(good) };
        const slow = byTime.filter(
          ({ wrenchId, takenAt }) =>
            wrenchId === WRENCH &&
            (good === undefined || Date.parse(takenAt) > Date.parse(onDay(good))) &&
            Date.parse(takenAt) <= Date.parse(onDay(found)),
        );
        const quick = pullsInDoubt(byTime, { wrenchId: WRENCH, foundAt: onDay(found), ...goodAt });
        expect(quick.map(({ pullId }) => pullId)).toEqual(slow.map(({ pullId }) => pullId));
      }),
    );
  });
});

describe('judging again', () => {
  const under = (pull: PullInDoubt, recall = aRecall()) =>
    rejudged(recall, [aPull(90, 0), pull]).find((line) => line.pull === pull)!.under;

  it('takes the error off at the torque that was shown', () => {
    // between 4 % at 40 N·m and 12 % at 200 N·m lie 7 % at 100 N·m
    expect(under(aPull(1, 50))['at-once']).toMatchObject({
      torqueNm: expect.closeTo(100 / 1.07, 10),
      verdict: 'under',
    });
    const throughAdapter = under(aPull(1, 50, { shownNm: 80 }))['at-once'];
    expect(throughAdapter.torqueNm).toBeCloseTo(100 / 1.06, 10);
  });

  it('lets it grow with time, and with the pulls', () => {
    const lines = rejudged(aRecall(), [aPull(1, 25), aPull(2, 50), aPull(3, 90), aPull(4, 100)]);
    const by = (n: number) => lines.find(({ pull }) => pull.position === n)!.under;
    expect(by(2)['with-time'].torqueNm).toBeCloseTo(100 / 1.035, 10);
    expect(by(1)['with-pulls'].torqueNm).toBeCloseTo(100 / 1.0175, 10);
    expect(by(4)['with-time']).toEqual(by(4)['at-once']);
  });

  it('begins with the deviation that was known before', () => {
    const before = [{ torqueNm: 100, deviationPercent: 1, standardUncertaintyPercent: 0.5 }];
    expect(under(aPull(1, 50), aRecall({ before }))['with-time'].torqueNm).toBeCloseTo(100 / 1.04, 10);
  });

  it('never calls a pull surer than it was', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 50, max: 150, noNaN: true }),
        fc.double({ min: 0, max: 20, noNaN: true }),
        (torqueNm, U) => {
          for (const one of Object.values(under(aPull(1, 50, { torqueNm, expandedUncertaintyNm: U })))) {
            expect(one.standardUncertaintyNm).toBeGreaterThanOrEqual(U / 2);
            expect(one.outside).toBeGreaterThanOrEqual(0);
            expect(one.outside).toBeLessThanOrEqual(1);
          }
        },
      ),
    );
  });

  it('puts the gravest first: class, those not classified after the highest, then chance', () => {
    const lines = rejudged(aRecall(), [
      aPull(1, 10, { consequenceClass: 'CC1', torqueNm: 90 }),
      aPull(2, 11, { consequenceClass: 'CC3', torqueNm: 104 }),
      aPull(3, 12),
      aPull(4, 13, { consequenceClass: 'CC3', torqueNm: 96 }),
      aPull(5, 14, { consequenceClass: 'CC2' }),
    ]);
    expect(lines.map(({ pull }) => pull.position)).toEqual([4, 2, 3, 5, 1]);
  });

  it('follows each line to its last recheck', () => {
    const lines = rejudged(aRecall(), [aPull(1, 10), aPull(2, 11)]);
    const recheck = (at: string, outcome: 'found-tight' | 'tightened-again') =>
      ({ id: uuid(700), recallId: uuid(800), pullId: uuid(1), at, by: 'Ana', outcome, note: '' }) as const;
    const both = [recheck(onDay(102), 'tightened-again'), recheck(onDay(101), 'found-tight')];
    const outcomes = followed(lines, both).map(({ pull, recheck: last }) => [pull.position, last?.outcome]);
    expect(outcomes.toSorted(([a = 0], [b = 0]) => Number(a) - Number(b))).toEqual([
      [1, 'tightened-again'],
      [2, undefined],
    ]);
  });
});
