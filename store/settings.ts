import { ok, type Result } from '@clampwright/core/failure';
import { attempt, type Database, type Engine, type Transaction, transact } from './engine.ts';

/** Short texts kept by name. */
export interface Settings {
  /** The value, or undefined where it was never set. */
  get(name: string): Promise<Result<string | undefined>>;
  set(name: string, value: string): Promise<Result<undefined>>;
}

export function settingsOn(engine: Engine): Settings {
  return {
    get: (name) => attempt(engine, async () => ok(await readSetting(engine.reading, name))),
    set: (name, value) => transact(engine, async (trx) => ok(await writeSetting(trx, name, value))),
  };
}

export async function readSetting(db: Database, name: string): Promise<string | undefined> {
  const row = await db.selectFrom('settings').select('value').where('name', '=', name).executeTakeFirst();
  return row?.value;
}

export async function writeSetting(trx: Transaction, name: string, value: string): Promise<undefined> {
  await trx
    .insertInto('settings')
    .values({ name, value })
    .onConflict((conflict) => conflict.column('name').doUpdateSet({ value }))
    .execute();
  return undefined;
}
