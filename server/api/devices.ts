import { createHash } from 'node:crypto';
import { type Device, withoutPassword } from '@clampwright/core/device';
import { failed, ok, type Result } from '@clampwright/core/failure';
import type { KeptDevice, Store } from '@clampwright/store';
import { z } from 'zod';
import type { Deps } from '../deps.ts';
import { testDevice } from '../devices/test-device.ts';
import { resumePorts } from '../wrenches/resume.ts';
import { anybody, onlyFor } from './access.ts';
import {
  deviceKeySchema,
  deviceTestSchema,
  type ShownDevice,
  saveDeviceSchema,
  shownDeviceSchema,
} from './contract.ts';
import { json, nothing } from './gives.ts';
import { type Route, route } from './route.ts';

const deviceParams = z.object({ id: z.uuid() });
const keepers = onlyFor('keeper', 'lead');

/** What nobody needs to see is left out. */
const shown = ({ device, hasKey }: KeptDevice, { devices }: Pick<Deps, 'devices'>): ShownDevice => ({
  device: withoutPassword(device),
  hasPassword: device.way.kind === 'opc-ua' && device.way.password !== undefined,
  hasKey,
  standing: devices.told(device.id),
});

const listDevices = route({
  method: 'get',
  path: '/devices',
  title: 'list the devices and how they stand',
  access: anybody,
  takes: z.object({}),
  gives: json(z.array(shownDeviceSchema)),
  handle: async (_, deps) => {
    const kept = await deps.store.devices.list();
    return kept.ok ? ok(kept.value.map((one) => shown(one, deps))) : kept;
  },
});

const saveDevice = route({
  method: 'post',
  path: '/devices',
  title: 'add or change a device',
  access: keepers,
  takes: z.object({ body: saveDeviceSchema }),
  gives: json(shownDeviceSchema),
  handle: async ({ body }, deps, { demo }) => {
    const meant = await withPassword(deps.store, body);
    if (!meant.ok) return meant;
    const saved = await deps.store.devices.save(meant.value, { demo });
    if (!saved.ok) return saved;
    const resumed = await resumePorts(deps);
    if (!resumed.ok) return resumed;
    await deps.devices.start(meant.value);
    const kept = await deps.store.devices.get(body.device.id);
    return kept.ok ? ok(shown(kept.value, deps)) : kept;
  },
});

/** The device as it is meant: the screen never got to know the password, so it may stay what it is. */
async function withPassword(
  store: Store,
  { device, keepPassword }: z.infer<typeof saveDeviceSchema>,
): Promise<Result<Device>> {
  if (!keepPassword || device.way.kind !== 'opc-ua') return ok(device);
  const kept = await store.devices.get(device.id);
  if (!kept.ok) return kept;
  const { way } = kept.value.device;
  const password = way.kind === 'opc-ua' && way.endpointUrl === device.way.endpointUrl ? way.password : undefined;
  return ok(password === undefined ? device : { ...device, way: { ...device.way, password } });
}

const removeDevice = route({
  method: 'delete',
  path: '/devices/{id}',
  title: 'remove a device',
  access: keepers,
  takes: z.object({ params: deviceParams }),
  gives: nothing,
  handle: async ({ params }, { store, devices }) => {
    const removed = await store.devices.remove(params.id);
    if (removed.ok) await devices.stop(params.id);
    return removed;
  },
});

const tryDevice = route({
  method: 'post',
  path: '/devices/{id}/test',
  title: 'test the connection of a device',
  access: keepers,
  takes: z.object({ params: deviceParams }),
  gives: json(deviceTestSchema),
  handle: async ({ params }, deps) => {
    const kept = await deps.store.devices.get(params.id);
    return kept.ok ? ok(await testDevice(deps, kept.value.device)) : kept;
  },
});

const KEY_BYTES = 32;
/** Tells a key of ours from any other secret, for whoever finds it in a log. */
const KEY_PREFIX = 'cwk_';

export const keyHashOf = (key: string): string => createHash('sha256').update(key).digest('hex');

const makeKey = route({
  method: 'post',
  path: '/devices/{id}/key',
  title: 'make a key for a device',
  access: keepers,
  takes: z.object({ params: deviceParams }),
  gives: json(deviceKeySchema, 201),
  handle: async ({ params }, { store, random }) => {
    const kept = await store.devices.get(params.id);
    if (!kept.ok) return kept;
    if (kept.value.device.way.kind !== 'http')
      return failed({ kind: 'conflict', message: 'Only a device that sends over HTTP needs a key.', current: null });
    const key = KEY_PREFIX + Buffer.from(random(KEY_BYTES)).toString('base64url');
    const set = await store.devices.setKey(params.id, keyHashOf(key));
    return set.ok ? ok({ key }) : set;
  },
});

const revokeKey = route({
  method: 'delete',
  path: '/devices/{id}/key',
  title: 'revoke the key of a device',
  access: keepers,
  takes: z.object({ params: deviceParams }),
  gives: nothing,
  handle: ({ params }, { store }) => store.devices.setKey(params.id, undefined),
});

export const devices: readonly Route[] = [listDevices, saveDevice, removeDevice, tryDevice, makeKey, revokeKey];
