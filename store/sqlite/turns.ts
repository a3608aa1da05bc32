import type BetterSqlite from 'better-sqlite3';
import type { Begun } from '../engine.ts';
import { builderOn } from './dialect.ts';
import { patiently, Turnstile } from './patience.ts';

/** Who may write, one transaction at a time. */
export interface Turns {
  readonly begin: () => Promise<Begun>;
  /** Waits for the transaction that is under way. */
  readonly close: () => Promise<void>;
}

/** Transactions on the connection that writes, in the order in which they are asked for. */
export function turnsOn(handle: BetterSqlite.Database): Turns {
  const turnstile = new Turnstile();
  const trx = Object.assign(builderOn(handle), { mayWrite: true } as const);
  const lock = handle.prepare('begin immediate');
  const keep = handle.prepare('commit');
  const undo = handle.prepare('rollback');

  const begin = async (): Promise<Begun> => {
    await turnstile.enter();
    try {
      await patiently(() => lock.run());
    } catch (error) {
      turnstile.leave();
      throw error;
    }
    return { trx, commit, rollback };
  };
  const commit = async (): Promise<void> => {
    try {
      keep.run();
    } finally {
      await rollback();
    }
  };
  /** Whatever is left to undo: nothing after a commit, and a full disk may have rolled back already. */
  const rollback = async (): Promise<void> => {
    try {
      if (handle.inTransaction) undo.run();
    } finally {
      turnstile.leave();
    }
  };
  const close = async (): Promise<void> => {
    try {
      await turnstile.enter();
    } finally {
      handle.close();
      // whoever still comes is told at once that it is closed
      turnstile.leave();
    }
  };
  return { begin, close };
}
