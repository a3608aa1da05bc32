/** Longest line that is kept in memory, characters: a pull with a trace of the longest kind. */
const LONGEST_LINE = 16 * 2 ** 20;
/** Lines that are handed on together; small enough that the first of them is not kept waiting. */
const MOST_TOGETHER = 500;

/** Lines of a stream as they arrive, those of one piece together, blank ones left out. */
export async function* linesIn(stream: ReadableStream<Uint8Array> | null): AsyncGenerator<readonly string[]> {
  const decoder = new TextDecoder();
  let tail = '';
  for await (const piece of stream ?? []) {
    const lines = (tail + decoder.decode(piece, { stream: true })).split(/\r?\n/);
    tail = lines.pop() ?? '';
    if (tail.length > LONGEST_LINE) {
      lines.push(tail.slice(0, 100));
      tail = '';
    }
    yield* portionsOf(lines);
  }
  yield* portionsOf([tail + decoder.decode()]);
}

function* portionsOf(lines: readonly string[]): Generator<readonly string[]> {
  const filled = lines.filter((line) => line.trim() !== '');
  for (let from = 0; from < filled.length; from += MOST_TOGETHER) yield filled.slice(from, from + MOST_TOGETHER);
}
