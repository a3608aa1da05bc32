import { failed, ok, type Result } from '@clampwright/core/failure';
import { canonical } from '@clampwright/core/record';
import { attempt, type Database, type Engine, type Transaction, transact } from './engine.ts';
import type { Adding } from './register.ts';
import { flag } from './tables.ts';

/** How the columns of a file are read, kept by name. What a mapping says is the intake's; it is parsed there. */
export interface NamedMapping {
  readonly name: string;
  readonly mapping: unknown;
  readonly demo: boolean;
}

export interface Mappings {
  /** A mapping saved under a name that is taken replaces the one before. */
  save(name: string, mapping: unknown, adding?: Adding): Promise<Result<NamedMapping>>;
  /** By name. */
  list(): Promise<Result<readonly NamedMapping[]>>;
  get(name: string): Promise<Result<NamedMapping>>;
}

export function mappingsOn(engine: Engine): Mappings {
  const { reading } = engine;
  return {
    save: (name, mapping, adding) => transact(engine, (trx) => save(trx, name, mapping, adding)),
    list: () => attempt(engine, () => list(reading)),
    get: (name) => attempt(engine, () => get(reading, name)),
  };
}

interface MappingRow {
  readonly name: string;
  readonly demo: 0 | 1;
  readonly mapping: string;
}

const mappingFromRow = (row: MappingRow): NamedMapping => ({
  name: row.name,
  mapping: JSON.parse(row.mapping),
  demo: row.demo === 1,
});

async function save(
  trx: Transaction,
  name: string,
  mapping: unknown,
  { demo = false }: Adding = {},
): Promise<Result<NamedMapping>> {
  const row = { name, demo: flag(demo), mapping: canonical(mapping) };
  await trx
    .insertInto('mappings')
    .values(row)
    .onConflict((conflict) => conflict.column('name').doUpdateSet(row))
    .execute();
  return ok(mappingFromRow(row));
}

async function list(db: Database): Promise<Result<readonly NamedMapping[]>> {
  const rows = await db.selectFrom('mappings').selectAll().orderBy('name').execute();
  return ok(rows.map(mappingFromRow));
}

async function get(db: Database, name: string): Promise<Result<NamedMapping>> {
  const row = await db.selectFrom('mappings').selectAll().where('name', '=', name).executeTakeFirst();
  return row ? ok(mappingFromRow(row)) : failed({ kind: 'not-found', what: 'mapping', id: name });
}
