import type BetterSqlite from 'better-sqlite3';
import type { CompiledQuery, DatabaseConnection, Driver, QueryResult } from 'kysely';

const STATEMENTS_KEPT = 200;

/** One connection of the database library. It keeps statements prepared: preparing one costs as much as running it. */
export class SqliteConnection implements DatabaseConnection {
  readonly #handle: BetterSqlite.Database;
  readonly #prepared = new Map<string, BetterSqlite.Statement<unknown[], never>>();

  constructor(handle: BetterSqlite.Database) {
    this.#handle = handle;
  }

  async executeQuery<R>({ sql, parameters }: CompiledQuery): Promise<QueryResult<R>> {
    const statement = this.#statement(sql);
    if (statement.reader) return { rows: statement.all(...parameters) };
    return { rows: [], numAffectedRows: BigInt(statement.run(...parameters).changes) };
  }

  /** Past the builder. */
  async run<R>({ sql, parameters }: CompiledQuery<R>): Promise<readonly R[]> {
    const statement = this.#statement(sql);
    if (statement.reader) return statement.all(...parameters);
    statement.run(...parameters);
    return [];
  }

  streamQuery<R>(): AsyncIterableIterator<QueryResult<R>> {
    throw new Error('long results are read in pages, so that no statement stays open');
  }

  /** The type of the rows is the query builder's word; `never` lets it stand without a claim of ours. */
  #statement(sql: string): BetterSqlite.Statement<unknown[], never> {
    const known = this.#prepared.get(sql);
    if (known) return known;
    if (this.#prepared.size >= STATEMENTS_KEPT) this.#prepared.clear();
    const statement = this.#handle.prepare<unknown[], never>(sql);
    this.#prepared.set(sql, statement);
    return statement;
  }
}

const BEGUN_ELSEWHERE = 'a transaction begins with the engine, which knows whose turn it is';

/** Hands the builder its one connection; a statement runs from begin to end before another can. */
export class SqliteDriver implements Driver {
  readonly #connection: SqliteConnection;

  constructor(connection: SqliteConnection) {
    this.#connection = connection;
  }

  async acquireConnection(): Promise<DatabaseConnection> {
    return this.#connection;
  }

  beginTransaction(): Promise<void> {
    throw new Error(BEGUN_ELSEWHERE);
  }

  commitTransaction(): Promise<void> {
    throw new Error(BEGUN_ELSEWHERE);
  }

  rollbackTransaction(): Promise<void> {
    throw new Error(BEGUN_ELSEWHERE);
  }

  async init(): Promise<void> {}
  async releaseConnection(): Promise<void> {}
  async destroy(): Promise<void> {}
}
