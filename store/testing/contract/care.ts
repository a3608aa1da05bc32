import { ok } from '@clampwright/core/failure';
import type { EntryBody, Judgement } from '@clampwright/core/record';
import type { BeforeUseCheck, Calibration, Recall, Recheck, ReferenceStandard } from '@clampwright/core/wrench';
import { describe, expect, it } from 'vitest';
import type { Store } from '../../store.ts';
import { deciding, firstEntries, hubSheet, identity, instant, lead, pullNumber, wrench } from '../workshop.ts';
import { failureOf, freshStore, type OpenStore, valueOf } from './folder.ts';

export const reference: ReferenceStandard = {
  id: identity('reference'),
  name: 'Bench transducer 250',
  serial: 'KH-R1',
  lowestNm: 5,
  highestNm: 250,
  certificate: 'R 1',
  by: 'a laboratory',
  calibratedOn: '2026-01-10',
  dueOn: '2027-01-10',
  expandedUncertaintyPercent: 0.4,
};

export const calibration: Calibration = {
  id: identity('whole calibration'),
  wrenchId: wrench.id,
  calibratedOn: '2026-03-02',
  dueOn: '2027-03-02',
  certificate: 'KC 7',
  by: 'the keeper',
  reference,
  asFound: {
    at: instant(5),
    preloadings: 1,
    points: [{ direction: 'clockwise', targetNm: 40, referenceNm: [40.1, 40.2] }],
    spreads: {},
  },
};

export const summary = {
  calibratedOn: '2026-03-02',
  dueOn: '2027-03-02',
  certificate: 'KC 7',
  by: 'the keeper',
  maximumDeviationPercent: 0.4,
  expandedUncertaintyPercent: 1,
  calibrationId: calibration.id,
};

export const recall: Recall = {
  id: identity('recall'),
  wrenchId: wrench.id,
  raisedAt: instant(900),
  by: 'the keeper',
  cause: { kind: 'dropped', what: 'fell from the ladder' },
  foundAt: instant(800),
  before: [],
  found: [{ torqueNm: 40, deviationPercent: 6, standardUncertaintyPercent: 0.5 }],
};

export const recheck: Recheck = {
  id: identity('recheck'),
  recallId: recall.id,
  pullId: identity('pull'),
  at: instant(1000),
  by: 'the technician',
  outcome: 'tightened-again',
  note: '',
};

export const aCheck: BeforeUseCheck = {
  id: identity('check'),
  wrenchId: wrench.id,
  at: instant(30),
  by: 'the technician',
  checker: 'Bench checker KH-K1',
  direction: 'clockwise',
  indicatedNm: 100,
  referenceNm: 99.2,
};

async function jobWithPulls(store: Store, word: string, count: number): Promise<string> {
  const { id } = hubSheet(word);
  valueOf(await store.jobs.open(firstEntries(hubSheet(word))));
  for (let n = 0; n < count; n++) valueOf(await store.jobs.append(id, deciding(pullNumber(id, n), 10 + n)));
  return id;
}

async function withWrench(open: OpenStore): Promise<Store> {
  const store = await freshStore(open);
  valueOf(await store.wrenches.add(wrench));
  return store;
}

export function keepsCare(open: OpenStore): void {
  describe('care of wrenches', () => {
    it('keeps each certificate of a reference and gives the newest', async () => {
      const { references } = await freshStore(open);
      const renewed = { ...reference, certificate: 'R 2', calibratedOn: '2027-01-08', dueOn: '2028-01-08' };
      for (const one of [reference, renewed, reference]) valueOf(await references.keep(one));
      expect(valueOf(await references.list())).toEqual([renewed]);
      expect(valueOf(await references.history(reference.id))).toEqual([reference, renewed]);
      expect(failureOf(await references.keep({ ...reference, id: identity('other') }))).toMatchObject({
        kind: 'conflict',
      });
    });

    it('keeps a calibration with its readings once, and gives the wrench what it says', async () => {
      const { care, wrenches } = await withWrench(open);
      for (let n = 0; n < 2; n++) valueOf(await care.calibrations.append(calibration, summary));
      expect(valueOf(await care.calibrations.list(wrench.id))).toEqual([calibration]);
      expect(valueOf(await wrenches.get(wrench.id)).calibration).toEqual(summary);
      expect(valueOf(await wrenches.calibrations(wrench.id))).toEqual([summary]);
      expect(failureOf(await care.calibrations.append({ ...calibration, by: 'another' }, summary)).kind).toBe(
        'conflict',
      );
    });

    it('keeps checks, recalls and what was done about each pull', async () => {
      const { care } = await withWrench(open);
      valueOf(await care.recalls.append(recall));
      valueOf(await care.rechecks.append(recheck));
      expect(valueOf(await care.rechecks.list(recall.id))).toEqual([recheck]);
      expect(
        failureOf(await care.rechecks.append({ ...recheck, id: identity('x'), recallId: identity('no') })),
      ).toEqual({ kind: 'not-found', what: 'recall', id: identity('no') });
    });

    it('refuses a second wrench with the same serial number, and knows one that was carried away', async () => {
      const { wrenches } = await withWrench(open);
      expect(failureOf(await wrenches.add({ ...wrench, id: identity('twin') }))).toMatchObject({ kind: 'conflict' });
      expect(valueOf(await wrenches.hold(wrench.id, { place: 'valley store', heldBy: 'Ilse' }))).toMatchObject({
        place: 'valley store',
        heldBy: 'Ilse',
      });
      valueOf(await wrenches.add(wrench));
      expect(valueOf(await wrenches.hold(wrench.id, {}))).toEqual(wrench);
    });
  });

  describe('pulls by wrench and time', () => {
    it('are those of the span, with job, asset and limits', async () => {
      const store = await withWrench(open);
      const jobId = await jobWithPulls(store, 'first', 6);
      await jobWithPulls(store, 'second', 3);
      const span = { after: instant(11), to: instant(14) };
      const pulls = valueOf(await store.pulls.of(wrench.id, span));
      expect(pulls).toHaveLength(4);
      expect(valueOf(await store.pulls.count(wrench.id, span))).toBe(4);
      expect(pulls.find((pull) => pull.pullId === pullNumber(jobId, 2).id)).toEqual({
        pullId: pullNumber(jobId, 2).id,
        wrenchId: wrench.id,
        takenAt: instant(12),
        job: { id: jobId, title: 'Hubs of first' },
        asset: 'Tower 3',
        jointRef: 'J1',
        joint: 'Hub J1',
        stage: 1,
        round: 1,
        position: 3,
        torqueNm: 30.2,
        shownNm: 30.2,
        lowerNm: 25,
        upperNm: 35,
      });
      expect(valueOf(await store.pulls.of(identity('other wrench'), {}))).toEqual([]);
    });

    it('follow a pull that is moved, and leave out one that was set aside', async () => {
      const store = await withWrench(open);
      const jobId = await jobWithPulls(store, 'mended', 2);
      const [first, second] = [pullNumber(jobId, 0).id, pullNumber(jobId, 1).id];
      const from = { jointRef: 'J1', stage: 1, round: 1, position: 1 };
      const judgement: Judgement = { verdict: 'within', reasons: [], expandedUncertaintyNm: 0.5 };
      const moved: EntryBody = {
        kind: 'pull-moved',
        pullId: first,
        from,
        to: { ...from, position: 5 },
        reason: 'miscounted',
        judgement,
      };
      const aside: EntryBody = {
        kind: 'pull-set-aside',
        pullId: second,
        cell: { ...from, position: 2 },
        reason: 'not ours',
      };
      const drafts = [moved, aside].map((body, n) => ({
        id: identity(`mending ${n}`),
        at: instant(60),
        by: lead,
        body,
      }));
      valueOf(await store.jobs.append(jobId, () => ok(drafts)));
      const before = valueOf(await store.pulls.of(wrench.id, {}));
      expect(before).toMatchObject([{ pullId: first, position: 5, expandedUncertaintyNm: 0.5 }]);
      valueOf(await store.jobs.rebuild());
      expect(valueOf(await store.pulls.of(wrench.id, {}))).toEqual(before);
    });
  });
}
