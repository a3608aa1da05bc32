import { setTimeout } from 'node:timers/promises';
import type { Device } from '@clampwright/core/device';
import type { DeviceTest } from '../api/contract.ts';
import { problemOf } from '../api/problem.ts';
import type { Deps } from '../deps.ts';
import { folderIsThere } from './run-folder.ts';

/** Longest wait for a device to answer; two attempts of an OPC UA connection fit in. */
const WAIT_MS = 6000;
const LOOK_EVERY_MS = 50;

/** Begins the device anew and tells how it went. */
export async function testDevice({ devices, store }: Deps, device: Device): Promise<DeviceTest> {
  const { way } = device;
  if (way.kind === 'http') {
    const kept = await store.devices.get(device.id);
    const hasKey = kept.ok && kept.value.hasKey;
    return { works: hasKey, detail: hasKey ? '' : 'There is no key yet.' };
  }
  if (way.kind === 'folder') {
    const there = await folderIsThere(way);
    if (!there.ok) return { works: false, detail: problemOf(there.failure).detail };
  }
  await devices.start(device);
  for (let waitedMs = 0; waitedMs < WAIT_MS; waitedMs += LOOK_EVERY_MS) {
    const { state, detail, certificate } = devices.told(device.id);
    if (state !== 'waiting') return { works: state === 'connected', detail, ...(certificate ? { certificate } : {}) };
    await setTimeout(LOOK_EVERY_MS);
  }
  return { works: false, detail: 'No answer came in time.' };
}
