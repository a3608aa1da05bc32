import type { Transaction } from '../engine.ts';
import { MIGRATIONS } from './index.ts';
import type { Dialect, Migration } from './migration.ts';

/** Brings the schema to the newest version in the transaction it is given; tells how many steps that took. */
export async function migrate(
  trx: Transaction,
  dialect: Dialect,
  steps: readonly Migration[] = MIGRATIONS,
): Promise<number> {
  await trx.schema
    .createTable('schema_versions')
    .ifNotExists()
    .addColumn('version', 'integer', (column) => column.primaryKey().notNull())
    .addColumn('name', 'text', (column) => column.notNull())
    .execute();
  const done = await trx.selectFrom('schema_versions').select('version').execute();
  const versions = new Set(done.map(({ version }) => version));
  const pending = steps.filter(({ version }) => !versions.has(version));
  for (const { version, name, up } of pending) {
    await up(trx, dialect);
    await trx.insertInto('schema_versions').values({ version, name }).execute();
  }
  return pending.length;
}
