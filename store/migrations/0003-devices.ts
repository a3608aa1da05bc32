import { sql } from 'kysely';
import type { Migration } from './migration.ts';

/** Devices that tell pulls, and how the lines of wrenches are read. Both may be changed and removed: no pull hangs on them. */
export const devices: Migration = {
  version: 3,
  name: 'devices',
  up: async (db) => {
    await db.schema
      .createTable('devices')
      .addColumn('id', 'text', (column) => column.primaryKey().notNull())
      .addColumn('demo', 'integer', (column) => column.notNull().check(sql`demo in (0, 1)`))
      .addColumn('name', 'text', (column) => column.notNull())
      .addColumn('content', 'text', (column) => column.notNull())
      .addColumn('key_hash', 'text')
      .execute();
    await db.schema.createIndex('devices_by_key').unique().on('devices').column('key_hash').execute();
    await db.schema
      .createTable('line_descriptions')
      .addColumn('name', 'text', (column) => column.primaryKey().notNull())
      .addColumn('demo', 'integer', (column) => column.notNull().check(sql`demo in (0, 1)`))
      .addColumn('content', 'text', (column) => column.notNull())
      .execute();
  },
};
