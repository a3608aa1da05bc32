import type BetterSqlite from 'better-sqlite3';
import type { Begun } from '../engine.ts';
import { builderOn } from './dialect.ts';
import { patiently, Turnstile } from './patience.ts';
import { type Keeping, keepingOn } from './together.ts';

/** Who may write, one transaction at a time. */
export interface Turns {
  readonly begin: () => Promise<Begun>;
  /** Waits for the transaction that is under way. */
  readonly close: () => Promise<void>;
}

/**
 * Transactions on the connection that writes, in the order in which they are asked for. Those that are done in the
 * same turn of the event loop are kept together, see {@link keepingOn}.
 */
export function turnsOn(handle: BetterSqlite.Database): Turns {
  const turnstile = new Turnstile();
  const trx = Object.assign(builderOn(handle), { mayWrite: true } as const);
  const keeping = keepingOn(handle);
  const lock = handle.prepare('begin immediate');

  const begin = async (): Promise<Begun> => {
    await turnstile.enter();
    try {
      if (!handle.inTransaction) await patiently(() => lock.run());
      return { trx, ...endings(keeping.join(), turnstile) };
    } catch (error) {
      turnstile.leave();
      throw error;
    }
  };
  const close = async (): Promise<void> => {
    try {
      await turnstile.enter();
    } finally {
      keeping.keepNow();
      handle.close();
      // whoever still comes is told at once that it is closed
      turnstile.leave();
    }
  };
  return { begin, close };
}

/** However a transaction ends, the next one may begin. */
function endings({ keep, undo }: Keeping, turnstile: Turnstile): Omit<Begun, 'trx'> {
  const ended = <T>(end: () => T): T => {
    try {
      return end();
    } finally {
      turnstile.leave();
    }
  };
  return {
    commit: async () => ended(keep),
    rollback: async (because) => ended(() => undo(because)),
  };
}
