import { invalid, ok } from '@clampwright/core/failure';
import type { Outcome } from './problem.ts';

/** The body whole; stops reading once it is larger than agreed. */
export async function readBytes(request: Request, maximumBytes: number): Promise<Outcome<Uint8Array>> {
  if (Number(request.headers.get('content-length') ?? 0) > maximumBytes) return tooLarge(maximumBytes);
  const chunks: Uint8Array[] = [];
  let length = 0;
  for await (const chunk of request.body ?? []) {
    length += chunk.byteLength;
    if (length > maximumBytes) return tooLarge(maximumBytes);
    chunks.push(chunk);
  }
  return ok(Buffer.concat(chunks));
}

const tooLarge = (maximumBytes: number): Outcome<never> => ({
  ok: false,
  failure: { kind: 'too-large', message: `At most ${maximumBytes} bytes are taken at once.` },
});

/** The body as JSON; what cannot be read is told with the place where reading stopped. */
export async function readJson(request: Request, maximumBytes: number): Promise<Outcome<unknown>> {
  const bytes = await readBytes(request, maximumBytes);
  if (!bytes.ok) return bytes;
  try {
    return ok(JSON.parse(new TextDecoder('utf-8', { fatal: true }).decode(bytes.value)));
  } catch (error) {
    if (!(error instanceof SyntaxError || error instanceof TypeError)) throw error;
    return invalid('(whole input)', `the body cannot be read: ${error.message}`, 'a JSON document in UTF-8');
  }
}
