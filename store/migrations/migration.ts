import type { ColumnDataType, Kysely } from 'kysely';
import type { Tables } from '../tables.ts';

/** What the database products write differently when tables are made. */
export interface Dialect {
  /** A whole number that counts upwards by itself and never gives the same number twice. */
  readonly counter: 'integer' | 'bigserial';
  readonly bytes: Extract<ColumnDataType, 'blob' | 'bytea'>;
  /** Said at the end of a table whose rows lie in the order of its key; empty where the product has no such thing. */
  readonly clustered: 'without rowid' | '';
  /** Statements that hold what is append-only, for the tables that this version of the schema made. */
  readonly guards: (version: number) => readonly string[];
}

/** One step of the schema. A step that was released is never changed: the next one mends it. */
export interface Migration {
  readonly version: number;
  readonly name: string;
  readonly up: (db: Kysely<Tables>, dialect: Dialect) => Promise<void>;
}
