import { sql } from 'kysely';
import type { Migration } from './migration.ts';

/** Materials and lubricants of the workshop's own; what one says is read by `core/fastener`. */
export const ownRows: Migration = {
  version: 2,
  name: 'own rows',
  up: async (db, dialect) => {
    await db.schema
      .createTable('own_rows')
      .addColumn('id', 'text', (column) => column.primaryKey().notNull())
      .addColumn('demo', 'integer', (column) => column.notNull().check(sql`demo in (0, 1)`))
      .addColumn('name', 'text', (column) => column.notNull())
      .addColumn('content', 'text', (column) => column.notNull())
      .execute();
    for (const statement of dialect.guards(2)) await sql.raw(statement).execute(db);
  },
};
