import type { Device, DeviceCounts } from '@clampwright/core/device';
import { type LineDescription, OWN_LINES } from '@clampwright/core/line';
import { describe, expect, it } from 'vitest';
import { identity } from '../workshop.ts';
import { failureOf, freshFolder, freshStore, type OpenStore, storeIn, valueOf } from './folder.ts';

const gateway: Device = { id: identity('gateway'), name: 'Gateway', way: { kind: 'http' } };
const press: Device = {
  id: identity('press'),
  name: 'At the press',
  way: { kind: 'serial', path: '/dev/ttyUSB0', baudRate: 9600, lines: OWN_LINES.name },
};
const lines: LineDescription = {
  name: 'Bench wrench',
  delimiter: ';',
  decimalSign: 'comma',
  torqueUnit: 'N·m',
  angleUnit: 'deg',
  lines: [{ says: 'result', fields: [{ means: 'mark', text: 'KW' }, { means: 'torque' }] }],
  endOfPull: { by: 'result' },
};

export function keepsDevices(open: OpenStore): void {
  describe('devices', () => {
    it('are kept by name, each replacing itself', async () => {
      const folder = await freshFolder();
      const { devices } = await storeIn(folder, open);
      for (const device of [gateway, { ...press, name: 'Old name' }, press]) valueOf(await devices.save(device));
      const kept = [
        { device: press, hasKey: false },
        { device: gateway, hasKey: false },
      ];
      expect(valueOf(await devices.list())).toEqual(kept);
      expect(valueOf(await (await storeIn(folder, open)).devices.list())).toEqual(kept);
    });

    it('are found by the hash of their key until it is taken away, also when they are changed', async () => {
      const { devices } = await freshStore(open);
      valueOf(await devices.save(gateway));
      expect(failureOf(await devices.byKey('one hash')).kind).toBe('not-found');
      valueOf(await devices.setKey(gateway.id, 'one hash'));
      const renamed = { ...gateway, name: 'Gateway in the yard' };
      valueOf(await devices.save(renamed));
      expect(valueOf(await devices.byKey('one hash'))).toEqual(renamed);
      expect(valueOf(await devices.get(gateway.id))).toEqual({ device: renamed, hasKey: true });
      valueOf(await devices.setKey(gateway.id, 'another hash'));
      expect(failureOf(await devices.byKey('one hash')).kind).toBe('not-found');
      valueOf(await devices.setKey(gateway.id, undefined));
      expect(failureOf(await devices.byKey('another hash')).kind).toBe('not-found');
    });

    it('are gone with their key once removed, and say so', async () => {
      const { devices } = await freshStore(open);
      valueOf(await devices.save(gateway));
      valueOf(await devices.setKey(gateway.id, 'one hash'));
      valueOf(await devices.remove(gateway.id));
      const gone = { kind: 'not-found', what: 'device', id: gateway.id };
      expect(failureOf(await devices.remove(gateway.id))).toEqual(gone);
      expect(failureOf(await devices.get(gateway.id))).toEqual(gone);
      expect(failureOf(await devices.setKey(gateway.id, 'one hash'))).toEqual(gone);
      expect(failureOf(await devices.byKey('one hash')).kind).toBe('not-found');
    });
  });

  describe('what devices have told', () => {
    const told = (taken: number): DeviceCounts => ({
      since: '2026-03-02T06:00:00.000Z',
      taken,
      already: 1,
      refused: 0,
      unreadable: 2,
      reconnections: 3,
      raw: ['KW;1;42,0'],
      lastFault: { kind: 'line', code: 'no-such-line' },
      lastSeenAt: '2026-03-02T06:10:00.000Z',
    });

    it('is kept as it was told last, and goes with its device', async () => {
      const folder = await freshFolder();
      const { devices } = await storeIn(folder, open);
      for (const device of [gateway, press]) valueOf(await devices.save(device));
      valueOf(
        await devices.keepCounts(
          new Map([
            [gateway.id, told(4)],
            [press.id, told(7)],
          ]),
        ),
      );
      valueOf(await devices.keepCounts(new Map([[gateway.id, told(5)]])));
      const kept = valueOf(await (await storeIn(folder, open)).devices.counts());
      expect(kept).toEqual(
        new Map([
          [gateway.id, told(5)],
          [press.id, told(7)],
        ]),
      );

      valueOf(await devices.remove(press.id));
      valueOf(await devices.keepCounts(new Map([[press.id, told(8)]])));
      expect([...valueOf(await devices.counts()).keys()]).toEqual([gateway.id]);
    });
  });

  describe('line descriptions', () => {
    it('are kept by name, each replacing itself, beside the lines of the simulated wrench', async () => {
      const { lineDescriptions } = await freshStore(open);
      const changed: LineDescription = { ...lines, decimalSign: 'point' };
      for (const description of [lines, changed]) valueOf(await lineDescriptions.save(description));
      expect(valueOf(await lineDescriptions.list())).toEqual([changed, OWN_LINES]);
      expect(valueOf(await lineDescriptions.get(lines.name))).toEqual(changed);
      valueOf(await lineDescriptions.remove(lines.name));
      expect(valueOf(await lineDescriptions.list())).toEqual([OWN_LINES]);
      expect(failureOf(await lineDescriptions.get(lines.name)).kind).toBe('not-found');
      expect(failureOf(await lineDescriptions.remove(lines.name)).kind).toBe('not-found');
    });

    it('leave the lines of the simulated wrench as they are', async () => {
      const { lineDescriptions } = await freshStore(open);
      const conflict = { kind: 'conflict', current: OWN_LINES };
      expect(failureOf(await lineDescriptions.save({ ...lines, name: OWN_LINES.name }))).toMatchObject(conflict);
      expect(failureOf(await lineDescriptions.remove(OWN_LINES.name))).toMatchObject(conflict);
      expect(valueOf(await lineDescriptions.get(OWN_LINES.name))).toEqual(OWN_LINES);
    });
  });
}
