import { type DeviceCounts, withoutPassword } from '@clampwright/core/device';
import { ok } from '@clampwright/core/failure';
import type { Outcome } from '@clampwright/server';
import type { KeptDevice, Store } from '@clampwright/store';
import { dataFolder } from '../data-folder.ts';
import { withStore } from '../open.ts';
import { answer, remark, toJson } from '../say.ts';
import { table } from '../table.ts';

interface Wanted {
  readonly data?: string;
  readonly json?: true;
}

/** A device with what it has told; null: nothing yet. */
interface Listed extends KeptDevice {
  readonly counts: DeviceCounts | null;
}

/** `clampwright devices`: every device with what it has told since it was set up; a running server adds to it every few seconds. */
export async function listDevices({ data, json }: Wanted): Promise<Outcome<0>> {
  const listed = await withStore(dataFolder(data), listedIn);
  if (!listed.ok) return listed;
  if (json) answer(toJson(listed.value));
  else if (listed.value.length > 0) answer(table(HEAD, listed.value.map(rowOf)));
  else remark('There are no devices yet. Add one under Wrenches, Devices, or watch a folder with `clampwright serve`.');
  return ok(0);
}

async function listedIn({ devices }: Store): Promise<Outcome<readonly Listed[]>> {
  const kept = await devices.list();
  if (!kept.ok) return kept;
  const counts = await devices.counts();
  if (!counts.ok) return counts;
  return ok(
    kept.value.map(({ device, hasKey }) => ({
      device: withoutPassword(device),
      hasKey,
      counts: counts.value.get(device.id) ?? null,
    })),
  );
}

const HEAD = [
  'device',
  'way',
  'since',
  'taken',
  'known again',
  'refused',
  'unreadable',
  'reconnected',
  'heard',
  'last',
] as const;

function rowOf({ device: { name, way }, counts }: Listed): readonly (string | number)[] {
  if (!counts) return [name, way.kind, '-', 0, 0, 0, 0, 0, '-', '-'];
  const { since, taken, already, refused, unreadable, reconnections, lastSeenAt, raw } = counts;
  return [
    name,
    way.kind,
    since,
    taken,
    already,
    refused,
    unreadable,
    reconnections,
    lastSeenAt ?? '-',
    raw.at(-1) ?? '-',
  ];
}
