import type BetterSqlite from 'better-sqlite3';
import { Kysely, SqliteAdapter, SqliteIntrospector, SqliteQueryCompiler } from 'kysely';
import type { Database } from '../engine.ts';
import type { Dialect } from '../migrations/index.ts';
import { SqliteDriver } from './driver.ts';
import { guardStatements } from './guards.ts';

export const dialect: Dialect = { counter: 'integer', bytes: 'blob', guards: guardStatements };

/** The query builder over one connection. */
export const builderOn = (handle: BetterSqlite.Database): Database =>
  new Kysely({
    dialect: {
      createAdapter: () => new SqliteAdapter(),
      createDriver: () => new SqliteDriver(handle),
      createIntrospector: (db) => new SqliteIntrospector(db),
      createQueryCompiler: () => new SqliteQueryCompiler(),
    },
  });
