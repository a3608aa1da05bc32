import { type CreateTableBuilder, type Kysely, sql } from 'kysely';
import type { Tables } from '../tables.ts';
import type { Dialect, Migration } from './migration.ts';

type Making = CreateTableBuilder<string>;

export const foundation: Migration = {
  version: 1,
  name: 'foundation',
  up: async (db, dialect) => {
    await makeJobs(db, dialect);
    await makeJoints(db);
    await makeRegisters(db);
    await makePeople(db);
    await makeSettings(db);
    for (const statement of dialect.guards(1)) await sql.raw(statement).execute(db);
  },
};

const withDemo = (table: Making): Making =>
  table.addColumn('demo', 'integer', (column) => column.notNull().check(sql`demo in (0, 1)`));

async function makeJobs(db: Kysely<Tables>, dialect: Dialect): Promise<void> {
  await withDemo(db.schema.createTable('jobs').addColumn('id', 'text', (column) => column.primaryKey().notNull()))
    .addColumn('title', 'text', (column) => column.notNull())
    .addColumn('asset_name', 'text', (column) => column.notNull())
    .addColumn('asset_location', 'text', (column) => column.notNull())
    .addColumn('status', 'text', (column) => column.notNull())
    .addColumn('done', 'integer', (column) => column.notNull())
    .addColumn('total', 'integer', (column) => column.notNull())
    .addColumn('retorques', 'text', (column) => column.notNull())
    .addColumn('opened_at', 'text', (column) => column.notNull())
    .addColumn('last_at', 'text', (column) => column.notNull())
    .addColumn('last_seq', 'integer', (column) => column.notNull())
    .addColumn('last_hash', 'text', (column) => column.notNull())
    .execute();
  await db.schema
    .createTable('entries')
    .addColumn('arrival', dialect.counter, (column) =>
      dialect.counter === 'integer' ? column.primaryKey().autoIncrement() : column.primaryKey(),
    )
    .addColumn('job_id', 'text', (column) => column.notNull().references('jobs.id'))
    .addColumn('seq', 'integer', (column) => column.notNull())
    .addColumn('id', 'text', (column) => column.notNull().unique())
    .addColumn('entry', 'text', (column) => column.notNull())
    .addUniqueConstraint('entries_in_order', ['job_id', 'seq'])
    .execute();
  await db.schema
    .createTable('traces')
    .addColumn('pull_id', 'text', (column) => column.primaryKey().notNull().references('entries.id'))
    .addColumn('job_id', 'text', (column) => column.notNull().references('jobs.id'))
    .addColumn('samples', dialect.bytes, (column) => column.notNull())
    .execute();
  await db.schema.createIndex('traces_of_job').on('traces').column('job_id').execute();
  await db.schema
    .createTable('seals')
    .addColumn('job_id', 'text', (column) => column.primaryKey().notNull().references('jobs.id'))
    .addColumn('seal', 'text', (column) => column.notNull())
    .execute();
}

async function makeJoints(db: Kysely<Tables>): Promise<void> {
  await withDemo(
    db.schema.createTable('joints').addColumn('id', 'text', (column) => column.primaryKey().notNull()),
  ).execute();
  await db.schema
    .createTable('joint_revisions')
    .addColumn('joint_id', 'text', (column) => column.notNull().references('joints.id'))
    .addColumn('revision', 'integer', (column) => column.notNull())
    .addColumn('status', 'text', (column) => column.notNull())
    .addColumn('content', 'text', (column) => column.notNull())
    .addPrimaryKeyConstraint('joint_revisions_key', ['joint_id', 'revision'])
    .execute();
}

async function makeRegisters(db: Kysely<Tables>): Promise<void> {
  for (const name of ['wrenches', 'adapters', 'extensions', 'assets']) {
    await withDemo(db.schema.createTable(name).addColumn('id', 'text', (column) => column.primaryKey().notNull()))
      .addColumn('name', 'text', (column) => column.notNull())
      .addColumn('content', 'text', (column) => column.notNull())
      .execute();
  }
  await db.schema
    .createTable('calibrations')
    .addColumn('wrench_id', 'text', (column) => column.notNull().references('wrenches.id'))
    .addColumn('number', 'integer', (column) => column.notNull())
    .addColumn('calibrated_on', 'text', (column) => column.notNull())
    .addColumn('summary', 'text', (column) => column.notNull())
    .addPrimaryKeyConstraint('calibrations_key', ['wrench_id', 'number'])
    .execute();
}

async function makePeople(db: Kysely<Tables>): Promise<void> {
  await withDemo(db.schema.createTable('people').addColumn('id', 'text', (column) => column.primaryKey().notNull()))
    .addColumn('name', 'text', (column) => column.notNull())
    .addColumn('role', 'text', (column) => column.notNull())
    .addColumn('pin_hash', 'text')
    .execute();
  await db.schema
    .createTable('sessions')
    .addColumn('token_hash', 'text', (column) => column.primaryKey().notNull())
    .addColumn('person_id', 'text', (column) => column.notNull().references('people.id'))
    .addColumn('expires_at', 'text', (column) => column.notNull())
    .addColumn('ended_at', 'text')
    .execute();
}

async function makeSettings(db: Kysely<Tables>): Promise<void> {
  await withDemo(db.schema.createTable('mappings').addColumn('name', 'text', (column) => column.primaryKey().notNull()))
    .addColumn('mapping', 'text', (column) => column.notNull())
    .execute();
  await db.schema
    .createTable('settings')
    .addColumn('name', 'text', (column) => column.primaryKey().notNull())
    .addColumn('value', 'text', (column) => column.notNull())
    .execute();
}
