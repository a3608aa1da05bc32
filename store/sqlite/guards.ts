import type { Tables } from '../tables.ts';

/*
 * What may never be altered is held by the database itself, whatever program writes to it. Rows of the invented
 * scenario can be removed, nothing else can. `insert or replace` removes without asking, so it is refused as well.
 */

interface Guard {
  readonly table: keyof Tables;
  /** Version of the schema that made the table; 1 where it is left out. */
  readonly since?: number;
  /** Sets of columns that tell rows apart. */
  readonly keys: readonly (readonly string[])[];
  /** SQL for the `demo` flag of the row that is about to go. */
  readonly demo: string;
  /** Columns that never change; `all` of them, or all while a condition holds. */
  readonly fixed: { readonly columns: 'all' | readonly string[]; readonly when?: string };
}

const demoOf = (table: keyof Tables, id: string): string => `(select demo from ${table} where id = old.${id})`;

const OWN_DEMO = 'old.demo';
const REGISTER = { keys: [['id']], demo: OWN_DEMO, fixed: { columns: ['id', 'demo'] } } as const;

function log(table: keyof Tables, demo: string): Guard {
  return { table, since: 4, keys: [['id']], demo, fixed: { columns: 'all' } };
}

const GUARDS: readonly Guard[] = [
  { table: 'jobs', keys: [['id']], demo: OWN_DEMO, fixed: { columns: ['id', 'demo'] } },
  {
    table: 'entries',
    keys: [['id'], ['job_id', 'seq'], ['arrival']],
    demo: demoOf('jobs', 'job_id'),
    fixed: { columns: 'all' },
  },
  { table: 'traces', keys: [['pull_id']], demo: demoOf('jobs', 'job_id'), fixed: { columns: 'all' } },
  { table: 'seals', keys: [['job_id']], demo: demoOf('jobs', 'job_id'), fixed: { columns: 'all' } },
  { table: 'joints', keys: [['id']], demo: OWN_DEMO, fixed: { columns: 'all' } },
  {
    table: 'joint_revisions',
    keys: [['joint_id', 'revision']],
    demo: demoOf('joints', 'joint_id'),
    fixed: { columns: 'all', when: "old.status = 'released'" },
  },
  { table: 'wrenches', ...REGISTER },
  { table: 'adapters', ...REGISTER },
  { table: 'extensions', ...REGISTER },
  { table: 'assets', ...REGISTER },
  {
    table: 'calibrations',
    keys: [['wrench_id', 'number']],
    demo: demoOf('wrenches', 'wrench_id'),
    fixed: { columns: 'all' },
  },
  { table: 'people', keys: [['id']], demo: OWN_DEMO, fixed: { columns: ['id', 'demo'] } },
  {
    table: 'reference_standards',
    since: 4,
    keys: [['id', 'number']],
    demo: OWN_DEMO,
    fixed: { columns: 'all' },
  },
  ...(['whole_calibrations', 'checks', 'recalls'] as const).map((table) => log(table, demoOf('wrenches', 'owner_id'))),
  log('rechecks', '(select demo from wrenches where id = (select owner_id from recalls where id = old.owner_id))'),
  { table: 'own_rows', since: 2, keys: [['id']], demo: OWN_DEMO, fixed: { columns: 'all' } },
];

/** Triggers for every guarded table that a version of the schema made. */
export const guardStatements = (version: number): readonly string[] =>
  GUARDS.filter(({ since = 1 }) => since === version).flatMap(triggersOf);

function triggersOf({ table, keys, demo, fixed }: Guard): readonly string[] {
  const columns = fixed.columns === 'all' ? '' : `of ${fixed.columns.join(', ')} `;
  const when = fixed.when === undefined ? '' : `when ${fixed.when} `;
  const same = keys.map(
    (key) => `exists (select 1 from ${table} where ${key.map((column) => `${column} = new.${column}`).join(' and ')})`,
  );
  return [
    `create trigger ${table}_are_not_altered before update ${columns}on ${table} ${when}begin select raise(abort, '${table} are not altered'); end`,
    `create trigger ${table}_are_not_removed before delete on ${table} when coalesce(${demo}, 0) <> 1 begin select raise(abort, '${table} are not removed'); end`,
    `create trigger ${table}_are_not_replaced before insert on ${table} when ${same.join(' or ')} begin select raise(abort, '${table} are not replaced'); end`,
  ];
}
