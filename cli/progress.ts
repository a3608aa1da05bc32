const FIRST_MS = 1000;
const EVERY_MS = 500;

/** Where it is told, and by which clock. */
export interface Telling {
  readonly write: (text: string) => unknown;
  readonly nowMs: () => number;
}

const ON_STANDARD_ERROR: Telling = { write: (text) => process.stderr.write(text), nowMs: () => Date.now() };

/** Passes bytes on and, where it takes longer than a second, tells how far it is. */
export async function* progress(
  bytes: AsyncIterable<Uint8Array>,
  total: number,
  { write, nowMs }: Telling = ON_STANDARD_ERROR,
): AsyncGenerator<Uint8Array> {
  let done = 0;
  let told = false;
  let dueMs = nowMs() + FIRST_MS;
  try {
    for await (const piece of bytes) {
      yield piece;
      done += piece.length;
      if (nowMs() < dueMs) continue;
      write(`\r${((100 * done) / total).toFixed(0)} %`);
      told = true;
      dueMs = nowMs() + EVERY_MS;
    }
  } finally {
    if (told) write('\n');
  }
}
