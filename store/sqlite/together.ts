import type BetterSqlite from 'better-sqlite3';

/** The end of one transaction of those that are kept together. */
export interface Keeping {
  /** Resolves once it is on the disk. */
  readonly keep: () => Promise<void>;
  /** Whatever is left to undo: a full disk may have undone all of them already, and then that is why they are lost. */
  readonly undo: (because: unknown) => void;
}

/** Transactions of one connection that the disk keeps together. */
export interface Together {
  /** One more begins, on a connection that holds the write lock. */
  readonly join: () => Keeping;
  /** Keeps at once what is done. */
  readonly keepNow: () => void;
}

interface Done {
  readonly kept: () => void;
  readonly lost: (error: unknown) => void;
}

/**
 * Keeps the transactions that are done in one turn of the event loop with one flush of the disk, which costs
 * milliseconds where all the rest of an append costs a tenth of one. Alone, a transaction waits for nothing; of a
 * hundred busy wrenches the more are kept together the slower the disk is. Each stays a whole of its own: one that is
 * undone takes none of the others with it.
 */
export function keepingOn(handle: BetterSqlite.Database): Together {
  const commit = handle.prepare('commit');
  const rollback = handle.prepare('rollback');
  const mark = handle.prepare('savepoint one_more');
  const release = handle.prepare('release one_more');
  const back = handle.prepare('rollback to one_more');
  const done: Done[] = [];
  let isAtWork = false;
  let due: NodeJS.Immediate | undefined;

  const keepNow = (): void => {
    clearImmediate(due);
    due = undefined;
    // the one at work comes to its end, and then this comes again
    if (isAtWork || done.length === 0) return;
    const all = done.splice(0);
    try {
      commit.run();
    } catch (error) {
      if (handle.inTransaction) rollback.run();
      for (const { lost } of all) lost(error);
      return;
    }
    for (const { kept } of all) kept();
  };
  const soon = (): void => {
    due ??= setImmediate(keepNow);
  };
  const undoOne = (isFirst: boolean, because: unknown): void => {
    if (!handle.inTransaction) {
      for (const { lost } of done.splice(0)) lost(because);
    } else if (isFirst) {
      rollback.run();
    } else {
      back.run();
      release.run();
    }
  };

  return {
    join: () => {
      const isFirst = done.length === 0;
      if (!isFirst) mark.run();
      isAtWork = true;
      return {
        keep: () => {
          isAtWork = false;
          soon();
          if (!isFirst) release.run();
          return new Promise((kept, lost) => done.push({ kept, lost }));
        },
        undo: (because) => {
          isAtWork = false;
          undoOne(isFirst, because);
          if (done.length > 0) soon();
        },
      };
    },
    keepNow,
  };
}
