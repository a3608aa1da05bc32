import type { Problem } from '@clampwright/server/contract';

/** The server's refusal of a request, as RFC 9457 tells it. */
export class Refusal extends Error {
  readonly problem: Problem;
  constructor(problem: Problem) {
    super(problem.detail || problem.title);
    this.name = 'Refusal';
    this.problem = problem;
  }
}

/** No answer came: the network or the server is away. */
export class Unreachable extends Error {
  constructor(cause: unknown) {
    super('the server did not answer', { cause });
    this.name = 'Unreachable';
  }
}

type Check<T> = (value: unknown) => value is T;

/**
 * A light check of an answer: an object that has these fields. The server has parsed its own answers with the
 * contract's schemas; this catches an answer from something else at the same address.
 */
export const having =
  <T>(...fields: readonly (keyof T & string)[]): Check<T> =>
  (value): value is T =>
    typeof value === 'object' && value !== null && fields.every((field) => field in value);

/** A light check of a list, item by item. */
export const listOf =
  <T>(item: Check<T>): Check<readonly T[]> =>
  (value): value is readonly T[] =>
    Array.isArray(value) && value.every(item);

/** For answers that nobody reads. */
export const anything = (_value: unknown): _value is unknown => true;

const isProblem = having<Problem>('title', 'status', 'detail');

async function answerOf<T>(response: Response, check: Check<T>): Promise<T> {
  const text = await response.text();
  const value: unknown = text === '' ? null : jsonOrNull(text);
  if (response.ok && check(value)) return value;
  if (!response.ok && isProblem(value)) throw new Refusal(value);
  throw new Refusal({ type: 'about:blank', title: response.statusText, status: response.status, detail: '' });
}

function jsonOrNull(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    // Not JSON: a proxy's or another program's page. The caller tells it as an answer that does not fit.
    return null;
  }
}

async function ask(path: string, init: RequestInit): Promise<Response> {
  try {
    return await fetch(`/api/v1${path}`, init);
  } catch (cause) {
    throw new Unreachable(cause);
  }
}

/** Fetches; throws `Refusal` or `Unreachable`. `path` begins after `/api/v1`. */
export const get = async <T>(path: string, check: Check<T>, signal?: AbortSignal): Promise<T> =>
  answerOf(await ask(path, signal ? { signal } : {}), check);

/** Sends JSON; throws `Refusal` or `Unreachable`. */
export async function send<T>(method: 'POST' | 'DELETE', path: string, body: unknown, check: Check<T>): Promise<T> {
  const init: RequestInit =
    body === undefined
      ? { method }
      : { method, headers: { 'content-type': 'application/json' }, body: JSON.stringify(body) };
  return answerOf(await ask(path, init), check);
}

/** Sends a file as it is, byte for byte; throws `Refusal` or `Unreachable`. */
export const sendFile = async <T>(path: string, file: Blob, check: Check<T>): Promise<T> =>
  answerOf(
    await ask(path, { method: 'POST', headers: { 'content-type': 'application/octet-stream' }, body: file }),
    check,
  );
