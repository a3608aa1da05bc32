import type { Device } from '@clampwright/core/device';
import type { ToldPull } from '@clampwright/core/line';
import type { Deps } from '../deps.ts';
import type { TakenWrench } from './ports.ts';

/**
 * The calibration that a pull of a device belongs to: the one of its wrench before the one that listens to the device
 * as its reference. A wrench beside a reference tightens nothing, so a job that it is still taken for gets none of it;
 * wrenches that share the device with the reference keep their jobs.
 */
export async function benchFor(
  { readings, ports, store }: Pick<Deps, 'readings' | 'ports' | 'store'>,
  device: Device,
  { from }: ToldPull,
): Promise<string | undefined> {
  if (readings.heard().length === 0) return undefined;
  const wrenches = await store.wrenches.list();
  const wrenchId =
    device.wrenchId ?? (wrenches.ok ? wrenches.value.find(({ serial }) => from.includes(serial))?.id : undefined);
  if (wrenchId !== undefined && readings.isHeard(wrenchId)) return wrenchId;
  const isAtWork = wrenchId !== undefined && ports.inHand(wrenchId) !== undefined;
  return readings.isHeard(device.id) && !isAtWork ? device.id : undefined;
}

/** Hands a pull to the calibration that listens, and says so where its wrench is taken for a job. */
export function tellReading(
  { readings, listeners }: Pick<Deps, 'readings' | 'listeners'>,
  id: string,
  taken: TakenWrench | undefined,
  { torque, from }: ToldPull,
): void {
  const { value: torqueNm, text, unit } = torque;
  readings.tell(id, { kind: 'reading', torqueNm, text, unit, from });
  if (!taken) return;
  const detail = `${text} ${unit}`;
  listeners.tell(taken.jobId, { kind: 'wrench', wrenchId: taken.wrench.id, state: 'at-calibration', detail });
}
