import { invalid, ok } from '@clampwright/core/failure';
import type { Outcome } from './problem.ts';

/** Refuses to read on once a body is larger than agreed. */
export async function readText(request: Request, maximumBytes: number): Promise<Outcome<string>> {
  if (Number(request.headers.get('content-length') ?? 0) > maximumBytes) return tooLarge(maximumBytes);
  const decoder = new TextDecoder('utf-8', { fatal: true });
  let text = '';
  let bytes = 0;
  for await (const chunk of request.body ?? []) {
    bytes += chunk.byteLength;
    if (bytes > maximumBytes) return tooLarge(maximumBytes);
    text += decoder.decode(chunk, { stream: true });
  }
  return ok(text + decoder.decode());
}

const tooLarge = (maximumBytes: number): Outcome<never> => ({
  ok: false,
  failure: { kind: 'too-large', message: `At most ${maximumBytes} bytes are taken at once.` },
});

/** The body as JSON; what cannot be read is told with the place where reading stopped. */
export async function readJson(request: Request, maximumBytes: number): Promise<Outcome<unknown>> {
  try {
    const text = await readText(request, maximumBytes);
    return text.ok ? ok(JSON.parse(text.value)) : text;
  } catch (error) {
    if (error instanceof SyntaxError || error instanceof TypeError) {
      return invalid('(whole input)', `the body cannot be read: ${error.message}`, 'a JSON document in UTF-8');
    }
    throw error;
  }
}
