import { type Kysely, sql } from 'kysely';
import { addAllPulls } from '../pulls/backfill.ts';
import type { Tables } from '../tables.ts';
import type { Dialect, Migration } from './migration.ts';

/** Reference standards, calibrations with their readings, checks, recalls; and every pull by wrench and time. */
export const wrenchCare: Migration = {
  version: 4,
  name: 'wrench care',
  up: async (db, dialect) => {
    await makeReferences(db);
    await makeLogs(db);
    await makePulls(db, dialect);
    await addAllPulls(db);
    for (const statement of dialect.guards(4)) await sql.raw(statement).execute(db);
  },
};

async function makeReferences(db: Kysely<Tables>): Promise<void> {
  await db.schema
    .createTable('reference_standards')
    .addColumn('id', 'text', (column) => column.notNull())
    .addColumn('number', 'integer', (column) => column.notNull())
    .addColumn('demo', 'integer', (column) => column.notNull().check(sql`demo in (0, 1)`))
    .addColumn('content', 'text', (column) => column.notNull())
    .addPrimaryKeyConstraint('reference_standards_key', ['id', 'number'])
    .execute();
}

/** What is said of a wrench, or of a recall, one thing after the other. */
const LOGS = [
  ['whole_calibrations', 'wrenches.id'],
  ['checks', 'wrenches.id'],
  ['recalls', 'wrenches.id'],
  ['rechecks', 'recalls.id'],
] as const;

async function makeLogs(db: Kysely<Tables>): Promise<void> {
  for (const [name, owner] of LOGS) {
    await db.schema
      .createTable(name)
      .addColumn('id', 'text', (column) => column.primaryKey().notNull())
      .addColumn('owner_id', 'text', (column) => column.notNull().references(owner))
      .addColumn('at', 'text', (column) => column.notNull())
      .addColumn('content', 'text', (column) => column.notNull())
      .execute();
    await db.schema.createIndex(`${name}_of_owner`).on(name).columns(['owner_id', 'at']).execute();
  }
}

async function makePulls(db: Kysely<Tables>, { clustered }: Dialect): Promise<void> {
  await db.schema
    .createTable('pulls')
    .addColumn('wrench_id', 'text', (column) => column.notNull())
    .addColumn('taken_at', 'text', (column) => column.notNull())
    .addColumn('pull_id', 'text', (column) => column.notNull())
    .addColumn('job_id', 'text', (column) => column.notNull())
    .addColumn('joint_ref', 'text', (column) => column.notNull())
    .addColumn('stage', 'integer', (column) => column.notNull())
    .addColumn('round', 'integer', (column) => column.notNull())
    .addColumn('position', 'integer', (column) => column.notNull())
    .addColumn('torque_nm', 'double precision', (column) => column.notNull())
    .addColumn('shown_nm', 'double precision', (column) => column.notNull())
    .addColumn('lower_nm', 'double precision')
    .addColumn('upper_nm', 'double precision')
    .addColumn('uncertainty_nm', 'double precision')
    .addPrimaryKeyConstraint('pulls_of_wrench', ['wrench_id', 'taken_at', 'pull_id'])
    .modifyEnd(sql.raw(clustered))
    .execute();
}
