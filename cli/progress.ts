const EVERY_MS = 500;

/** Passes bytes on and, where it takes longer than a second, tells on standard error how far it is. */
export async function* progress(bytes: AsyncIterable<Uint8Array>, total: number): AsyncGenerator<Uint8Array> {
  let done = 0;
  let toldMs = Date.now() + EVERY_MS;
  let told = false;
  for await (const piece of bytes) {
    yield piece;
    done += piece.length;
    if (Date.now() < toldMs + EVERY_MS) continue;
    toldMs = Date.now();
    told = true;
    process.stderr.write(`\r${Math.round((100 * done) / Math.max(1, total))} % `);
  }
  if (told) process.stderr.write('\r100 %\n');
}
