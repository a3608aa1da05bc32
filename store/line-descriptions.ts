import { failed, ok, type Result } from '@clampwright/core/failure';
import { type LineDescription, lineDescriptionSchema, OWN_LINES } from '@clampwright/core/line';
import { canonical } from '@clampwright/core/record';
import { attempt, type Database, type Engine, type Transaction, transact } from './engine.ts';
import type { Adding } from './register.ts';
import { flag } from './tables.ts';

/** How the lines of wrenches are read, kept by name. The lines of the simulated wrench are always there. */
export interface LineDescriptions {
  /** Saved under a name that is taken, it replaces the one before. */
  save(description: LineDescription, adding?: Adding): Promise<Result<LineDescription>>;
  /** By name. */
  list(): Promise<Result<readonly LineDescription[]>>;
  get(name: string): Promise<Result<LineDescription>>;
  remove(name: string): Promise<Result<undefined>>;
}

export function lineDescriptionsOn(engine: Engine): LineDescriptions {
  const { reading } = engine;
  return {
    save: (description, adding) => transact(engine, (trx) => save(trx, description, adding)),
    list: () => attempt(engine, () => list(reading)),
    get: (name) => attempt(engine, () => get(reading, name)),
    remove: (name) => transact(engine, (trx) => remove(trx, name)),
  };
}

const fixed = () =>
  failed({
    kind: 'conflict',
    message: `“${OWN_LINES.name}” cannot be changed; save yours under another name.`,
    current: OWN_LINES,
  });
const noDescription = (id: string) => failed({ kind: 'not-found', what: 'line description', id });

const descriptionFrom = (row: { readonly content: string }): LineDescription =>
  lineDescriptionSchema.parse(JSON.parse(row.content));

async function save(
  trx: Transaction,
  description: LineDescription,
  { demo }: Adding = {},
): Promise<Result<LineDescription>> {
  const { name } = description;
  if (name === OWN_LINES.name) return fixed();
  const content = canonical(description);
  await trx
    .insertInto('line_descriptions')
    .values({ name, demo: flag(demo), content })
    .onConflict((conflict) => conflict.column('name').doUpdateSet({ content }))
    .execute();
  return ok(description);
}

async function list(db: Database): Promise<Result<readonly LineDescription[]>> {
  const rows = await db.selectFrom('line_descriptions').select('content').orderBy('name').execute();
  return ok([...rows.map(descriptionFrom), OWN_LINES].toSorted((a, b) => (a.name < b.name ? -1 : 1)));
}

async function get(db: Database, name: string): Promise<Result<LineDescription>> {
  if (name === OWN_LINES.name) return ok(OWN_LINES);
  const row = await db.selectFrom('line_descriptions').select('content').where('name', '=', name).executeTakeFirst();
  return row ? ok(descriptionFrom(row)) : noDescription(name);
}

async function remove(trx: Transaction, name: string): Promise<Result<undefined>> {
  if (name === OWN_LINES.name) return fixed();
  const { numDeletedRows } = await trx.deleteFrom('line_descriptions').where('name', '=', name).executeTakeFirst();
  return Number(numDeletedRows) > 0 ? ok(undefined) : noDescription(name);
}
