import { statSync } from 'node:fs';
import path from 'node:path';
import { type Device, deviceSchema } from '@clampwright/core/device';
import { invalid, ok, parse, type Result } from '@clampwright/core/failure';
import { sha256Hex, uuidV8 } from '@clampwright/core/record';
import type { Wrench } from '@clampwright/core/wrench';
import type { Store } from '@clampwright/store';

/** A folder that is to be watched, as it is named on the command line. */
export interface Watching {
  readonly watch?: string;
  readonly mapping?: string;
  readonly wrench?: string;
}

/** Sets a folder up as a device, as the screen does; the same folder again is the same device, changed. */
export async function watchFolder(
  store: Pick<Store, 'devices' | 'mappings' | 'wrenches'>,
  { watch, mapping, wrench }: Watching,
): Promise<Result<Device | undefined>> {
  if (watch === undefined) {
    if (mapping === undefined && wrench === undefined) return ok(undefined);
    return invalid('--watch', '--mapping and --wrench belong to a folder that is watched', 'a folder');
  }
  const folder = path.resolve(watch);
  if (!statSync(folder, { throwIfNoEntry: false })?.isDirectory())
    return invalid('--watch', `there is no folder ${folder}`, 'a folder of this machine');
  const saved = await savedMapping(store, mapping);
  if (!saved.ok) return saved;
  const found = await wrenchNamed(store, wrench);
  if (!found.ok) return found;
  const known = await store.devices.list();
  if (!known.ok) return known;
  const before = known.value
    .map(({ device }) => device)
    .find(({ way }) => way.kind === 'folder' && way.path === folder);
  const device = parse(deviceSchema, {
    id: before?.id ?? uuidV8(sha256Hex(`watched folder ${folder}`)),
    name: before?.name ?? `Folder ${path.basename(folder)}`.slice(0, 100),
    wrenchId: found.value.id,
    way: { kind: 'folder', path: folder, mapping: saved.value },
  });
  return device.ok ? store.devices.save(device.value) : device;
}

/** A watched folder is looked at for as long as it is there, so its mapping must be kept, not lie in a file. */
async function savedMapping({ mappings }: Pick<Store, 'mappings'>, name: string | undefined): Promise<Result<string>> {
  const known = await mappings.list();
  if (!known.ok) return known;
  const names = known.value.map((mapping) => mapping.name);
  if (name !== undefined && names.includes(name)) return ok(name);
  return invalid(
    '--mapping',
    name === undefined ? 'no mapping is named for the files of the folder' : `there is no saved mapping ${name}`,
    names.length > 0 ? `one of ${names.join(', ')}` : 'a mapping that is saved first; none is yet',
  );
}

async function wrenchNamed({ wrenches }: Pick<Store, 'wrenches'>, serial: string | undefined): Promise<Result<Wrench>> {
  const known = await wrenches.list();
  if (!known.ok) return known;
  const found = known.value.find((wrench) => wrench.serial === serial);
  if (found) return ok(found);
  return invalid(
    '--wrench',
    serial === undefined ? 'no wrench is named whose files they are' : `there is no wrench ${serial}`,
    known.value.map((wrench) => wrench.serial).join(', ') || 'the serial number of a wrench; none is there yet',
  );
}
