/** The database stayed locked by another writer for longer than anyone should wait. */
export class StillLocked extends Error {
  readonly code = 'SQLITE_BUSY';
}

const PATIENCE_MS = 10_000;
const POLL_MS = 3;

const isBusy = (error: unknown): boolean =>
  error instanceof Error && 'code' in error && typeof error.code === 'string' && error.code.startsWith('SQLITE_BUSY');

/**
 * Tries until another process lets go of its lock. Waits outside the library, whose own waiting stops the whole process.
 *
 * @throws StillLocked after ten seconds
 */
export async function patiently(work: () => void): Promise<void> {
  const deadlineMs = performance.now() + PATIENCE_MS;
  while (!succeeds(work)) {
    if (performance.now() > deadlineMs) throw new StillLocked('another process holds the lock');
    await new Promise((resolve) => setTimeout(resolve, POLL_MS));
  }
}

function succeeds(work: () => void): boolean {
  try {
    work();
    return true;
  } catch (error) {
    if (isBusy(error)) return false;
    throw error;
  }
}

/** Lets one through at a time, in the order in which they came. */
export class Turnstile {
  readonly #waiting: (() => void)[] = [];
  #taken = false;

  /** @throws StillLocked when the turn has not come within ten seconds */
  async enter(): Promise<void> {
    if (this.#taken) await this.#turn();
    this.#taken = true;
  }

  #turn(): Promise<void> {
    return new Promise((resolve, reject) => {
      const turn = () => {
        clearTimeout(timer);
        resolve();
      };
      const timer = setTimeout(() => {
        this.#waiting.splice(this.#waiting.indexOf(turn), 1);
        reject(new StillLocked('another transaction of this process takes long'));
      }, PATIENCE_MS);
      this.#waiting.push(turn);
    });
  }

  /** Hands over without letting anyone in between. */
  leave(): void {
    const next = this.#waiting.shift();
    if (next) next();
    else this.#taken = false;
  }
}
