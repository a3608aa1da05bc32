import { type Device, type DeviceCounts, deviceCountsSchema, deviceSchema } from '@clampwright/core/device';
import { failed, ok, type Result } from '@clampwright/core/failure';
import { canonical } from '@clampwright/core/record';
import { attempt, type Database, type Engine, type Transaction, transact } from './engine.ts';
import type { Adding } from './register.ts';
import { flag } from './tables.ts';

/** A device with whether somebody holds a key for it. */
export interface KeptDevice {
  readonly device: Device;
  readonly hasKey: boolean;
}

/** By the identity of the device. */
export type Counts = ReadonlyMap<string, DeviceCounts>;

/** Devices that tell pulls. What is saved under an identity that is taken replaces the one before. */
export interface Devices {
  save(device: Device, adding?: Adding): Promise<Result<Device>>;
  /** By name. */
  list(): Promise<Result<readonly KeptDevice[]>>;
  get(id: string): Promise<Result<KeptDevice>>;
  remove(id: string): Promise<Result<undefined>>;
  /** Only the hash of a key is known here; undefined takes the key away. */
  setKey(id: string, keyHash: string | undefined): Promise<Result<undefined>>;
  byKey(keyHash: string): Promise<Result<Device>>;
  /** What each device has told so far, by its identity. */
  counts(): Promise<Result<Counts>>;
  /** Of a device that is not there any more nothing is kept. */
  keepCounts(counts: Counts): Promise<Result<undefined>>;
}

export function devicesOn(engine: Engine): Devices {
  const { reading } = engine;
  return {
    save: (device, adding) => transact(engine, (trx) => save(trx, device, adding)),
    list: () => attempt(engine, () => list(reading)),
    get: (id) => attempt(engine, () => get(reading, id)),
    remove: (id) => transact(engine, (trx) => remove(trx, id)),
    setKey: (id, keyHash) => transact(engine, (trx) => setKey(trx, id, keyHash)),
    byKey: (keyHash) => attempt(engine, () => byKey(reading, keyHash)),
    counts: () => attempt(engine, () => countsIn(reading)),
    keepCounts: (counts) => transact(engine, (trx) => keepCounts(trx, counts)),
  };
}

const noDevice = (id: string) => failed({ kind: 'not-found', what: 'device', id });

const deviceFrom = (row: { readonly content: string }): Device => deviceSchema.parse(JSON.parse(row.content));

async function save(trx: Transaction, device: Device, { demo }: Adding = {}): Promise<Result<Device>> {
  const row = { name: device.name, content: canonical(device) };
  await trx
    .insertInto('devices')
    .values({ ...row, id: device.id, demo: flag(demo), key_hash: null })
    .onConflict((conflict) => conflict.column('id').doUpdateSet(row))
    .execute();
  return ok(device);
}

async function list(db: Database): Promise<Result<readonly KeptDevice[]>> {
  const rows = await db.selectFrom('devices').selectAll().orderBy('name').orderBy('id').execute();
  return ok(rows.map((row) => ({ device: deviceFrom(row), hasKey: row.key_hash !== null })));
}

async function get(db: Database, id: string): Promise<Result<KeptDevice>> {
  const row = await db.selectFrom('devices').selectAll().where('id', '=', id).executeTakeFirst();
  return row ? ok({ device: deviceFrom(row), hasKey: row.key_hash !== null }) : noDevice(id);
}

async function remove(trx: Transaction, id: string): Promise<Result<undefined>> {
  await trx.deleteFrom('device_counts').where('device_id', '=', id).execute();
  const { numDeletedRows } = await trx.deleteFrom('devices').where('id', '=', id).executeTakeFirst();
  return Number(numDeletedRows) > 0 ? ok(undefined) : noDevice(id);
}

async function setKey(trx: Transaction, id: string, keyHash: string | undefined): Promise<Result<undefined>> {
  const changed = await trx
    .updateTable('devices')
    .set({ key_hash: keyHash ?? null })
    .where('id', '=', id)
    .executeTakeFirst();
  return Number(changed.numUpdatedRows) > 0 ? ok(undefined) : noDevice(id);
}

async function byKey(db: Database, keyHash: string): Promise<Result<Device>> {
  const row = await db.selectFrom('devices').select('content').where('key_hash', '=', keyHash).executeTakeFirst();
  return row ? ok(deviceFrom(row)) : failed({ kind: 'not-found', what: 'device', id: '(key)' });
}

async function countsIn(db: Database): Promise<Result<Counts>> {
  const rows = await db.selectFrom('device_counts').selectAll().execute();
  return ok(new Map(rows.map((row) => [row.device_id, deviceCountsSchema.parse(JSON.parse(row.content))])));
}

async function keepCounts(trx: Transaction, counts: Counts): Promise<Result<undefined>> {
  const there = new Set((await trx.selectFrom('devices').select('id').execute()).map(({ id }) => id));
  for (const [id, told] of counts) {
    if (!there.has(id)) continue;
    const row = { content: canonical(told) };
    await trx
      .insertInto('device_counts')
      .values({ ...row, device_id: id })
      .onConflict((conflict) => conflict.column('device_id').doUpdateSet(row))
      .execute();
  }
  return ok(undefined);
}
