import { ok } from '@clampwright/core/failure';
import BetterSqlite from 'better-sqlite3';
import { expect, it, onTestFinished } from 'vitest';
import { transact } from '../engine.ts';
import { dialect } from '../sqlite/dialect.ts';
import { explain } from '../sqlite/explain.ts';
import { turnsOn } from '../sqlite/turns.ts';
import { MIGRATIONS } from './index.ts';
import { migrate } from './migrate.ts';

const tables = (db: BetterSqlite.Database): unknown =>
  db.prepare("select type, name, sql from sqlite_schema where name not like 'sqlite_%' order by name").all();

it('gives a database of every earlier version the very schema of a new one', async () => {
  const schemas = await Promise.all(
    MIGRATIONS.map(async (_, version) => {
      const handle = new BetterSqlite(':memory:');
      onTestFinished(() => void handle.close());
      const writer = { begin: turnsOn(handle).begin, explain };
      await transact(writer, async (trx) => ok(await migrate(trx, dialect, MIGRATIONS.slice(0, version))));
      const steps = await transact(writer, async (trx) => ok(await migrate(trx, dialect)));
      return { steps, schema: tables(handle), expected: MIGRATIONS.length - version };
    }),
  );
  for (const { steps, schema, expected } of schemas) {
    expect(steps).toEqual(ok(expected));
    expect(schema).toEqual(schemas[0]?.schema);
  }
});
