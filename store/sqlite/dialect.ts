import type BetterSqlite from 'better-sqlite3';
import { Kysely, SqliteAdapter, SqliteIntrospector, SqliteQueryCompiler } from 'kysely';
import type { Database } from '../engine.ts';
import type { Dialect } from '../migrations/index.ts';
import type { Tables } from '../tables.ts';
import { SqliteConnection, SqliteDriver } from './driver.ts';
import { guardStatements } from './guards.ts';

export const dialect: Dialect = {
  counter: 'integer',
  bytes: 'blob',
  clustered: 'without rowid',
  guards: guardStatements,
};

/** The query builder over one connection, and the way past it. */
export function builderOn(handle: BetterSqlite.Database): Database {
  const connection = new SqliteConnection(handle);
  const builder = new Kysely<Tables>({
    dialect: {
      createAdapter: () => new SqliteAdapter(),
      createDriver: () => new SqliteDriver(connection),
      createIntrospector: (db) => new SqliteIntrospector(db),
      createQueryCompiler: () => new SqliteQueryCompiler(),
    },
  });
  return Object.assign(builder, { run: connection.run.bind(connection) });
}
