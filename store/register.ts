import { failed, ok, type Result } from '@clampwright/core/failure';
import { canonical } from '@clampwright/core/record';
import type { z } from 'zod';
import { attempt, type Database, type Engine, type Transaction, transact } from './engine.ts';
import { flag } from './tables.ts';

/** What belongs to the invented scenario is marked so when it is added, and goes with it. */
export interface Adding {
  readonly demo?: boolean;
}

/** Things known by name, added once. */
export interface Register<Thing> {
  /** The same thing twice is kept once; another thing under the same identity is a conflict. */
  add(thing: Thing, adding?: Adding): Promise<Result<Thing>>;
  /** By name. */
  list(): Promise<Result<readonly Thing[]>>;
  get(id: string): Promise<Result<Thing>>;
}

interface Named {
  readonly id: string;
  readonly name: string;
}

/** Where a register lies and what it holds. */
export interface Kind<Thing extends Named> {
  readonly table: 'wrenches' | 'adapters' | 'extensions' | 'assets' | 'own_rows';
  /** What one of them is called. */
  readonly what: string;
  readonly schema: z.ZodType<Thing>;
  /** Whether a thing that was sent again is the one that is kept; every figure of it unless told otherwise. */
  readonly isSame?: (kept: Thing, sent: Thing) => boolean;
  /** Whether a thing may stand beside those that are kept; asked inside the transaction that adds it. */
  readonly joins?: (kept: readonly Thing[], thing: Thing) => Result<undefined>;
}

export function registerOn<Thing extends Named>(engine: Engine, kind: Kind<Thing>): Register<Thing> {
  return {
    add: (thing, adding) => transact(engine, (trx) => addTo(trx, kind, thing, adding)),
    list: () => attempt(engine, () => listOf(engine.reading, kind)),
    get: (id) => attempt(engine, () => getFrom(engine.reading, kind, id)),
  };
}

export async function addTo<Thing extends Named>(
  trx: Transaction,
  kind: Kind<Thing>,
  thing: Thing,
  { demo }: Adding = {},
): Promise<Result<Thing>> {
  const stored = await getFrom(trx, kind, thing.id);
  if (stored.ok) return isKept(kind, stored.value, thing) ? stored : taken(kind.what, stored.value);
  const joins = await joinsKept(trx, kind, thing);
  if (!joins.ok) return joins;
  await trx
    .insertInto(kind.table)
    .values({ id: thing.id, demo: flag(demo), name: thing.name, content: canonical(thing) })
    .execute();
  return ok(thing);
}

const isKept = <Thing extends Named>(kind: Kind<Thing>, kept: Thing, sent: Thing): boolean =>
  kind.isSame?.(kept, sent) ?? canonical(kept) === canonical(sent);

async function joinsKept<Thing extends Named>(
  trx: Transaction,
  kind: Kind<Thing>,
  thing: Thing,
): Promise<Result<undefined>> {
  if (!kind.joins) return ok(undefined);
  const kept = await listOf(trx, kind);
  return kept.ok ? kind.joins(kept.value, thing) : kept;
}

const taken = (what: string, current: unknown) =>
  failed({
    kind: 'conflict',
    message: `Another ${what} is kept under this identity; give the new one its own.`,
    current,
  });

export async function listOf<Thing extends Named>(db: Database, kind: Kind<Thing>): Promise<Result<readonly Thing[]>> {
  const rows = await db.selectFrom(kind.table).select('content').orderBy('name').orderBy('id').execute();
  return ok(rows.map(({ content }) => kind.schema.parse(JSON.parse(content))));
}

export async function getFrom<Thing extends Named>(
  db: Database,
  kind: Kind<Thing>,
  id: string,
): Promise<Result<Thing>> {
  const row = await db.selectFrom(kind.table).select('content').where('id', '=', id).executeTakeFirst();
  return row ? ok(kind.schema.parse(JSON.parse(row.content))) : failed({ kind: 'not-found', what: kind.what, id });
}
