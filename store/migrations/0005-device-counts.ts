import type { Migration } from './migration.ts';

/** What each device has told so far. Written on a slow beat, so that no line costs a flush of the disk. */
export const deviceCounts: Migration = {
  version: 5,
  name: 'device counts',
  up: async (db) => {
    await db.schema
      .createTable('device_counts')
      .addColumn('device_id', 'text', (column) => column.primaryKey().notNull())
      .addColumn('content', 'text', (column) => column.notNull())
      .execute();
  },
};
