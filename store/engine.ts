import { type Failure, failed, type Result } from '@clampwright/core/failure';
import type { CompiledQuery, Kysely } from 'kysely';
import type { Tables } from './tables.ts';

/** Reads and transactions alike: the query builder for what is rare, `run` for what every append does. */
export interface Database extends Kysely<Tables> {
  /** Runs a compiled statement past the builder's layers, which take longer than the database itself. */
  readonly run: <Row>(query: CompiledQuery<Row>) => Promise<readonly Row[]>;
}

/** The database from the begin to the end of a transaction. */
export interface Transaction extends Database {
  readonly mayWrite: true;
}

/** A transaction that is under way. However it is ended, it is over, and the next one can begin. */
export interface Begun {
  readonly trx: Transaction;
  readonly commit: () => Promise<void>;
  /** @param because what broke, where something did */
  readonly rollback: (because?: unknown) => Promise<void>;
}

/** One database product behind the store: the only thing that differs between them. */
export interface Engine {
  /** For reading what is committed; never waits for a writer. */
  readonly reading: Database;
  /** Waits its turn and takes the write lock before anything is read, so that what is decided holds at the commit. */
  readonly begin: () => Promise<Begun>;
  /** What the medium refused, in words and with a remedy; undefined when the error is a bug. */
  explain(error: unknown): Failure | undefined;
  /** A place beside the database for what may not be kept; it may grow larger than memory and is gone when closed. */
  spool(): Spool;
  /** Changes when another process has committed something; costs microseconds. */
  dataVersion(): number;
  close(): Promise<void>;
}

/** An entry in its place of waiting, in the form in which it will be stored. */
export interface SpooledEntry {
  readonly id: string;
  readonly seq: number;
  readonly entry: string;
  readonly samples: Uint8Array | null;
  /** What it does to the pulls by wrench and time, as JSON. */
  readonly pull: string | null;
}

export interface Spool {
  put(entry: SpooledEntry): void;
  /** The entries under these identities, as text. */
  find(ids: readonly string[]): readonly string[];
  /** All of them in order, page by page. */
  pages(): Iterable<readonly SpooledEntry[]>;
  close(): void;
}

/** What a transaction needs of an engine. */
export type Writer = Pick<Engine, 'begin' | 'explain'>;

/** Runs storage work; what the medium refuses becomes a failure, anything else is a bug and goes on its way. */
export async function attempt<T>(engine: Pick<Engine, 'explain'>, work: () => Promise<Result<T>>): Promise<Result<T>> {
  try {
    return await work();
  } catch (error) {
    const failure = engine.explain(error);
    if (failure) return failed(failure);
    throw error;
  }
}

/** Runs work in one transaction: committed when it succeeds, rolled back when it fails or throws. */
export function transact<T>(engine: Writer, work: (trx: Transaction) => Promise<Result<T>>): Promise<Result<T>> {
  return attempt(engine, async () => {
    const { trx, commit, rollback } = await engine.begin();
    const result = await work(trx).catch(async (error: unknown) => {
      await rollback(error);
      throw error;
    });
    await (result.ok ? commit() : rollback());
    return result;
  });
}
