import { type CompiledQuery, type RawBuilder, sql } from 'kysely';
import type { Database } from './engine.ts';

/** Stands for a value until the statement is used. */
class Slot {
  readonly name: PropertyKey;

  constructor(name: PropertyKey) {
    this.name = name;
  }
}

/** The place of a named value in a statement. */
export type SlotOf<Values> = <Name extends keyof Values>(name: Name) => RawBuilder<Values[Name]>;

/** A statement that was built and compiled once; building it anew at each use costs several times what the database does. */
export type Statement<Values, Row> = (db: Database, values: Values) => Promise<readonly Row[]>;

/**
 * Compiles a statement for one database product.
 *
 * @example
 * const find = statementOf<{ id: string }, { entry: string }>((slot) =>
 *   db.selectFrom('entries').select('entry').where('id', '=', slot('id')).compile());
 * await find(trx, { id });
 */
export function statementOf<Values extends object, Row = never>(
  build: (slot: SlotOf<Values>) => CompiledQuery<Row>,
): Statement<Values, Row> {
  const compiled = build((name) => sql`${new Slot(name)}`);
  return (db, values) => {
    const parameters = compiled.parameters.map((parameter) =>
      parameter instanceof Slot ? Reflect.get(values, parameter.name) : parameter,
    );
    return db.run<Row>({ ...compiled, parameters });
  };
}
