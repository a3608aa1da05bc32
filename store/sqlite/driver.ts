import type BetterSqlite from 'better-sqlite3';
import type { CompiledQuery, DatabaseConnection, Driver, QueryResult } from 'kysely';
import { patiently, Turnstile } from './patience.ts';

const STATEMENTS_KEPT = 200;

/** One connection of the database library, used by one transaction or query at a time. */
export class SqliteDriver implements Driver {
  readonly #handle: BetterSqlite.Database;
  readonly #connection: SqliteConnection;
  readonly #turnstile = new Turnstile();

  constructor(handle: BetterSqlite.Database) {
    this.#handle = handle;
    this.#connection = new SqliteConnection(handle);
  }

  async init(): Promise<void> {}

  async acquireConnection(): Promise<DatabaseConnection> {
    await this.#turnstile.enter();
    return this.#connection;
  }

  async releaseConnection(): Promise<void> {
    this.#turnstile.leave();
  }

  /** Takes the write lock before anything is read, so that what is decided still holds at the commit. */
  beginTransaction(): Promise<void> {
    return patiently(() => this.#connection.run('begin immediate'));
  }

  async commitTransaction(): Promise<void> {
    this.#connection.run('commit');
  }

  /** A full disk may have rolled back already. */
  async rollbackTransaction(): Promise<void> {
    if (this.#handle.inTransaction) this.#connection.run('rollback');
  }

  /** Waits for the transaction that is under way. */
  async destroy(): Promise<void> {
    try {
      await this.#turnstile.enter();
    } finally {
      this.#handle.close();
    }
  }
}

/** Keeps statements prepared: preparing one costs as much as running it. */
class SqliteConnection implements DatabaseConnection {
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

  run(sql: string): void {
    this.#statement(sql).run();
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
