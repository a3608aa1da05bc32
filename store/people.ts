import { failed, ok, type Result, type Role } from '@clampwright/core/failure';
import type { Selectable } from 'kysely';
import { attempt, type Database, type Engine, type Transaction, transact } from './engine.ts';
import type { Adding } from './register.ts';
import { flag, type PeopleTable } from './tables.ts';

/** Somebody as everyone may see them. */
export interface Person {
  readonly id: string;
  readonly name: string;
  readonly role: Role;
  readonly hasPin: boolean;
  readonly demo: boolean;
}

/** Somebody with what proves it is them; for signing in alone. */
export interface PersonWithPin extends Person {
  readonly pinHash: string | undefined;
}

export type NewPerson = Pick<PersonWithPin, 'id' | 'name' | 'role' | 'pinHash'>;

export interface People {
  /** The same person twice is kept once; another one under the same identity is a conflict. */
  add(person: NewPerson, adding?: Adding): Promise<Result<Person>>;
  /** By name, without what proves who they are. */
  list(): Promise<Result<readonly Person[]>>;
  get(id: string): Promise<Result<PersonWithPin>>;
}

export function peopleOn(engine: Engine): People {
  const { reading } = engine;
  return {
    add: (person, adding) => transact(engine, (trx) => add(trx, person, adding)),
    list: () => attempt(engine, () => list(reading)),
    get: (id) => attempt(engine, () => get(reading, id)),
  };
}

const personFromRow = (row: Selectable<PeopleTable>): PersonWithPin => ({
  id: row.id,
  name: row.name,
  role: row.role,
  hasPin: row.pin_hash !== null,
  demo: row.demo === 1,
  pinHash: row.pin_hash ?? undefined,
});

function withoutPin(whole: PersonWithPin): Person {
  const { pinHash: _, ...person } = whole;
  return person;
}

async function add(trx: Transaction, person: NewPerson, { demo }: Adding = {}): Promise<Result<Person>> {
  const stored = await get(trx, person.id);
  if (stored.ok) return isSame(stored.value, person) ? ok(withoutPin(stored.value)) : taken(withoutPin(stored.value));
  const { id, name, role, pinHash } = person;
  await trx
    .insertInto('people')
    .values({ id, demo: flag(demo), name, role, pin_hash: pinHash ?? null })
    .execute();
  return ok({ id, name, role, hasPin: pinHash !== undefined, demo: demo ?? false });
}

/** A hash is salted, so the same PIN given twice has two of them. */
const isSame = (stored: Person, person: NewPerson): boolean =>
  stored.name === person.name && stored.role === person.role;

const taken = (current: Person) =>
  failed({
    kind: 'conflict',
    message: 'Somebody else is kept under this identity; give the new person their own.',
    current,
  });

async function list(db: Database): Promise<Result<readonly Person[]>> {
  const rows = await db.selectFrom('people').selectAll().orderBy('name').orderBy('id').execute();
  return ok(rows.map((row) => withoutPin(personFromRow(row))));
}

async function get(db: Database, id: string): Promise<Result<PersonWithPin>> {
  const row = await db.selectFrom('people').selectAll().where('id', '=', id).executeTakeFirst();
  return row ? ok(personFromRow(row)) : failed({ kind: 'not-found', what: 'person', id });
}
