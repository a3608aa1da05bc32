const FIRST_MS = 1000;
const EVERY_MS = 500;

/** Passes bytes on and, where it takes longer than a second, tells on standard error how far it is. */
export async function* progress(bytes: AsyncIterable<Uint8Array>, total: number): AsyncGenerator<Uint8Array> {
  const tell = (percent: number): void => void process.stderr.write(`\r${percent.toFixed(0)} %`);
  let done = 0;
  let nextMs = Date.now() + FIRST_MS;
  let told = false;
  for await (const piece of bytes) {
    yield piece;
    done += piece.length;
    if (Date.now() < nextMs) continue;
    tell((99 * done) / total);
    told = true;
    nextMs = Date.now() + EVERY_MS;
  }
  if (told) process.stderr.write('\r');
}
