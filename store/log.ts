import { failed, ok, type Result } from '@clampwright/core/failure';
import { canonical } from '@clampwright/core/record';
import type { z } from 'zod';
import { attempt, type Database, type Engine, type Transaction, transact } from './engine.ts';

/** Things said one after the other of a wrench or of a recall. None is ever changed. */
export interface Log<Thing> {
  /** The same thing twice is kept once; another thing under the same identity is a conflict. */
  append(thing: Thing): Promise<Result<Thing>>;
  get(id: string): Promise<Result<Thing>>;
  /** In the order of their time; of one owner, or of all. */
  list(ownerId?: string): Promise<Result<readonly Thing[]>>;
}

/** Where a log lies and what it holds. */
export interface LogKind<Thing extends { readonly id: string }> {
  readonly table: 'whole_calibrations' | 'checks' | 'recalls' | 'rechecks';
  readonly what: string;
  readonly schema: z.ZodType<Thing>;
  /** What it is said of, which must be there. */
  readonly owner: {
    readonly table: 'wrenches' | 'recalls';
    readonly what: string;
    readonly idOf: (thing: Thing) => string;
  };
  readonly atOf: (thing: Thing) => string;
}

export function logOn<Thing extends { readonly id: string }>(engine: Engine, kind: LogKind<Thing>): Log<Thing> {
  const { reading } = engine;
  return {
    append: (thing) => transact(engine, (trx) => appendTo(trx, kind, thing)),
    get: (id) => attempt(engine, () => getFrom(reading, kind, id)),
    list: (ownerId) => attempt(engine, () => listOf(reading, kind, ownerId)),
  };
}

export async function appendTo<Thing extends { readonly id: string }>(
  trx: Transaction,
  kind: LogKind<Thing>,
  thing: Thing,
): Promise<Result<Thing>> {
  const stored = await getFrom(trx, kind, thing.id);
  if (stored.ok) return canonical(stored.value) === canonical(thing) ? stored : taken(kind.what, stored.value);
  const ownerId = kind.owner.idOf(thing);
  const owner = await trx.selectFrom(kind.owner.table).select('id').where('id', '=', ownerId).executeTakeFirst();
  if (!owner) return failed({ kind: 'not-found', what: kind.owner.what, id: ownerId });
  await trx
    .insertInto(kind.table)
    .values({ id: thing.id, owner_id: ownerId, at: kind.atOf(thing), content: canonical(thing) })
    .execute();
  return ok(thing);
}

const taken = (what: string, current: unknown) =>
  failed({
    kind: 'conflict',
    message: `Another ${what} is kept under this identity; give the new one its own.`,
    current,
  });

async function getFrom<Thing extends { readonly id: string }>(
  db: Database,
  { table, what, schema }: LogKind<Thing>,
  id: string,
): Promise<Result<Thing>> {
  const row = await db.selectFrom(table).select('content').where('id', '=', id).executeTakeFirst();
  return row ? ok(schema.parse(JSON.parse(row.content))) : failed({ kind: 'not-found', what, id });
}

async function listOf<Thing extends { readonly id: string }>(
  db: Database,
  { table, schema }: LogKind<Thing>,
  ownerId: string | undefined,
): Promise<Result<readonly Thing[]>> {
  const query = db.selectFrom(table).select('content').orderBy('at').orderBy('id');
  const rows = await (ownerId === undefined ? query : query.where('owner_id', '=', ownerId)).execute();
  return ok(rows.map(({ content }) => schema.parse(JSON.parse(content))));
}
