import type { CalibrationSummary } from '@clampwright/core/wrench';
import { describe, expect, it } from 'vitest';
import { hubContent, identity, wrench } from '../workshop.ts';
import { failureOf, freshStore, type OpenStore, valueOf } from './folder.ts';

const adapter = { id: identity('adapter'), name: 'Open jaw 19', lengthMm: 55, angleDeg: 0 };

const calibration = (calibratedOn: string): CalibrationSummary => ({
  calibratedOn,
  dueOn: '2027-01-31',
  certificate: `KH ${calibratedOn}`,
  by: 'Kestrelhorn calibration bench',
  maximumDeviationPercent: 1.2,
  expandedUncertaintyPercent: 0.8,
});

export function keepsRegisters(open: OpenStore): void {
  describe('registers', () => {
    it('keep the same thing once and refuse another under its identity', async () => {
      const { adapters } = await freshStore(open);
      valueOf(await adapters.add(adapter));
      valueOf(await adapters.add(adapter));
      expect(failureOf(await adapters.add({ ...adapter, lengthMm: 56 }))).toMatchObject({
        kind: 'conflict',
        current: adapter,
      });
      expect(valueOf(await adapters.list())).toEqual([adapter]);
    });

    it('list by name', async () => {
      const { extensions, assets } = await freshStore(open);
      for (const name of ['Long', 'Bent', 'Short']) {
        valueOf(await extensions.add({ id: identity(name), name, lengthMm: 100 }));
        valueOf(await assets.add({ id: identity(name), name, location: 'yard' }));
      }
      expect(valueOf(await extensions.list()).map(({ name }) => name)).toEqual(['Bent', 'Long', 'Short']);
      expect(valueOf(await assets.list()).map(({ name }) => name)).toEqual(['Bent', 'Long', 'Short']);
    });

    it('say that a thing is not there', async () => {
      const { adapters, wrenches } = await freshStore(open);
      expect(failureOf(await adapters.get(adapter.id))).toEqual({ kind: 'not-found', what: 'adapter', id: adapter.id });
      expect(failureOf(await wrenches.calibrate(wrench.id, calibration('2026-01-31')))).toMatchObject({
        what: 'wrench',
      });
    });

    it('give a wrench with its newest calibration, whatever the order of adding', async () => {
      const { wrenches } = await freshStore(open);
      valueOf(await wrenches.add({ ...wrench, calibration: calibration('2025-01-20') }));
      valueOf(await wrenches.calibrate(wrench.id, calibration('2026-01-31')));
      valueOf(await wrenches.calibrate(wrench.id, calibration('2024-01-15')));
      expect(valueOf(await wrenches.get(wrench.id)).calibration).toEqual(calibration('2026-01-31'));
      expect(valueOf(await wrenches.list())[0]?.calibration).toEqual(calibration('2026-01-31'));
      expect(valueOf(await wrenches.calibrations(wrench.id)).map(({ calibratedOn }) => calibratedOn)).toEqual([
        '2025-01-20',
        '2026-01-31',
        '2024-01-15',
      ]);
    });

    it('keep the same calibration once', async () => {
      const { wrenches } = await freshStore(open);
      for (let n = 0; n < 2; n++) valueOf(await wrenches.add({ ...wrench, calibration: calibration('2026-01-31') }));
      expect(valueOf(await wrenches.calibrations(wrench.id))).toHaveLength(1);
    });
  });

  describe('joints', () => {
    const id = identity('hub');
    const renamed = { ...hubContent, name: 'Sheave hub, long bolts' };

    it('change while they are drafts', async () => {
      const { joints } = await freshStore(open);
      expect(valueOf(await joints.saveDraft(id, hubContent))).toMatchObject({ revision: 1, status: 'draft' });
      expect(valueOf(await joints.saveDraft(id, renamed)).revision).toBe(1);
      expect(valueOf(await joints.get(id, 1)).content).toEqual(renamed);
    });

    it('get a new revision once they are released', async () => {
      const { joints } = await freshStore(open);
      valueOf(await joints.saveDraft(id, hubContent));
      expect(valueOf(await joints.release(id, 1)).status).toBe('released');
      expect(valueOf(await joints.saveDraft(id, renamed))).toMatchObject({ revision: 2, status: 'draft' });
      const { revisions } = valueOf(await joints.history(id));
      expect(revisions.map(({ status, content }) => [status, content.name])).toEqual([
        ['released', 'Sheave hub'],
        ['draft', 'Sheave hub, long bolts'],
      ]);
    });

    it('are listed with their latest and their released revision', async () => {
      const { joints } = await freshStore(open);
      valueOf(await joints.saveDraft(id, hubContent));
      expect(valueOf(await joints.list())[0]).toMatchObject({ latest: { revision: 1 }, releasedRevision: undefined });
      valueOf(await joints.release(id, 1));
      valueOf(await joints.saveDraft(id, renamed));
      valueOf(await joints.saveDraft(identity('flange'), { ...hubContent, name: 'A flange' }));
      const listed = valueOf(await joints.list());
      expect(
        listed.map(({ latest, releasedRevision }) => [latest.content.name, latest.revision, releasedRevision]),
      ).toEqual([
        ['A flange', 1, undefined],
        ['Sheave hub, long bolts', 2, 1],
      ]);
    });

    it('are released once, and only where there is something to release', async () => {
      const { joints } = await freshStore(open);
      valueOf(await joints.saveDraft(id, hubContent));
      valueOf(await joints.release(id, 1));
      expect(valueOf(await joints.release(id, 1)).status).toBe('released');
      expect(failureOf(await joints.release(id, 2)).kind).toBe('not-found');
      expect(failureOf(await joints.history(identity('none'))).kind).toBe('not-found');
    });
  });
}
