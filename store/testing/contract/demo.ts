import { describe, expect, it } from 'vitest';
import type { Store } from '../../store.ts';
import {
  deciding,
  firstEntries,
  hubContent,
  hubSheet,
  identity,
  instant,
  ownStud,
  pullNumber,
  wrench,
} from '../workshop.ts';
import { aCheck, recall, recheck, reference, summary, calibration as wholeCalibration } from './care.ts';
import { freshStore, type OpenStore, valueOf } from './folder.ts';

/** One of everything. */
async function fill(store: Store, word: string, demo: boolean): Promise<void> {
  const sheet = hubSheet(word, demo);
  valueOf(await store.jobs.open(firstEntries(sheet)));
  const trace = { timeS: [0, 1], angleDeg: [0, 30], torqueNm: [0, 30] };
  const pull = pullNumber(sheet.id, 0, { trace });
  valueOf(await store.jobs.append(sheet.id, deciding(pull, 10), { traces: { [pull.id]: trace } }));
  const id = identity(`thing of ${word}`);
  valueOf(await store.joints.saveDraft(id, hubContent, { demo }));
  valueOf(await store.joints.release(id, 1));
  const calibration = {
    calibratedOn: '2026-01-31',
    dueOn: '2027-01-31',
    certificate: word,
    by: 'bench',
    maximumDeviationPercent: 1,
    expandedUncertaintyPercent: 1,
  };
  valueOf(await store.wrenches.add({ ...wrench, id, serial: word, calibration }, { demo }));
  valueOf(await store.references.keep({ ...reference, id, serial: word }, { demo }));
  const whole = { ...wholeCalibration, id, wrenchId: id };
  valueOf(await store.care.calibrations.append(whole, { ...summary, calibrationId: id }));
  valueOf(await store.care.checks.append({ ...aCheck, id, wrenchId: id }));
  valueOf(await store.care.recalls.append({ ...recall, id, wrenchId: id }));
  valueOf(await store.care.rechecks.append({ ...recheck, id, recallId: id }));
  valueOf(await store.adapters.add({ id, name: word, lengthMm: 50, angleDeg: 0 }, { demo }));
  valueOf(await store.extensions.add({ id, name: word, lengthMm: 50 }, { demo }));
  valueOf(await store.assets.add({ id, name: word, location: '' }, { demo }));
  valueOf(await store.ownRows.add(ownStud(id, word), { demo }));
  valueOf(await store.people.add({ id, name: word, role: 'lead', pinHash: 'hash' }, { demo }));
  valueOf(await store.sessions.begin({ tokenHash: word, personId: id, expiresAt: instant(60) }));
  valueOf(await store.mappings.save(word, { columns: [] }, { demo }));
}

async function everything(store: Store): Promise<unknown> {
  const jobs = valueOf(await store.jobs.list());
  return {
    jobs,
    entries: await Promise.all(jobs.map(({ id }) => store.jobs.entries(id))),
    joints: valueOf(await store.joints.list()),
    pulls: valueOf(await store.pulls.of(wrench.id, {})),
    wrenches: valueOf(await store.wrenches.list()),
    references: valueOf(await store.references.list()),
    calibrations: valueOf(await store.care.calibrations.list()),
    checks: valueOf(await store.care.checks.list()),
    recalls: valueOf(await store.care.recalls.list()),
    rechecks: valueOf(await store.care.rechecks.list()),
    adapters: valueOf(await store.adapters.list()),
    extensions: valueOf(await store.extensions.list()),
    assets: valueOf(await store.assets.list()),
    ownRows: valueOf(await store.ownRows.list()),
    people: valueOf(await store.people.list()),
    mappings: valueOf(await store.mappings.list()),
  };
}

export function keepsDemoApart(open: OpenStore): void {
  describe('the invented scenario', () => {
    it('is removed whole, and nothing else with it', async () => {
      const alone = await freshStore(open);
      await fill(alone, 'our own', false);
      const store = await freshStore(open);
      await fill(store, 'our own', false);
      await fill(store, 'invented', true);
      valueOf(await store.demo.remove());
      expect(await everything(store)).toEqual(await everything(alone));
      const { id } = pullNumber(hubSheet('invented').id, 0);
      expect((await store.jobs.trace(id)).ok).toBe(false);
      expect((await store.sessions.find('invented', instant(0))).ok).toBe(false);
      expect((await store.sessions.find('our own', instant(0))).ok).toBe(true);
    });

    it('can be loaded again after it was removed', async () => {
      const store = await freshStore(open);
      await fill(store, 'invented', true);
      const before = await everything(store);
      valueOf(await store.demo.remove());
      await fill(store, 'invented', true);
      expect(await everything(store)).toEqual(before);
    });

    it('says whether it was ever loaded', async () => {
      const { demo } = await freshStore(open);
      expect(valueOf(await demo.state())).toBe('never-loaded');
      valueOf(await demo.finishLoading());
      expect(valueOf(await demo.state())).toBe('loaded');
      valueOf(await demo.remove());
      expect(valueOf(await demo.state())).toBe('removed');
    });
  });
}
