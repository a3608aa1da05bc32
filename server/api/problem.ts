import type { Failure } from '@clampwright/core/failure';
import type { Problem } from './contract.ts';

/** What the edge itself refuses, beside the failures that the rooms below tell. */
export type Refusal =
  | Failure
  | { readonly kind: 'not-signed-in'; readonly message: string }
  | { readonly kind: 'demonstration-only'; readonly message: string }
  | { readonly kind: 'too-many-attempts'; readonly message: string; readonly retryAfterS: number }
  | { readonly kind: 'too-many-listeners'; readonly message: string; readonly retryAfterS: number }
  | { readonly kind: 'too-large'; readonly message: string }
  | { readonly kind: 'foreign-origin'; readonly message: string }
  | { readonly kind: 'broken'; readonly message: string };

export type Outcome<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly failure: Refusal };

const TITLES = {
  invalid: [400, 'Invalid input'],
  'not-signed-in': [401, 'Not signed in'],
  forbidden: [403, 'Not allowed'],
  'demonstration-only': [403, 'In the demonstration only'],
  'foreign-origin': [403, 'Not from here'],
  'not-found': [404, 'Not found'],
  conflict: [409, 'Conflict'],
  'too-large': [413, 'Too large'],
  'too-many-attempts': [429, 'Too many attempts'],
  broken: [500, 'Broken'],
  unavailable: [503, 'Not available'],
  'too-many-listeners': [503, 'Too many listeners'],
} as const satisfies Record<Refusal['kind'], readonly [number, string]>;

type Status = (typeof TITLES)[Refusal['kind']][0];

/** The one translation of what was refused into a problem document (RFC 9457). */
export function problemOf(refusal: Refusal): Problem & { readonly status: Status } {
  const [status, title] = TITLES[refusal.kind];
  return { type: `urn:problem-type:${refusal.kind}`, title, status, ...told(refusal) };
}

function told(refusal: Refusal): Omit<Problem, 'type' | 'title' | 'status'> {
  switch (refusal.kind) {
    case 'invalid':
      return { detail: `${refusal.field}: ${refusal.message}`, field: refusal.field, expected: refusal.expected };
    case 'not-found':
      return { detail: `There is no ${refusal.what} ${refusal.id}.`, what: refusal.what, id: refusal.id };
    case 'conflict':
      return { detail: refusal.message, current: refusal.current };
    case 'forbidden':
      return {
        detail: `To ${refusal.action} the role ${refusal.needs} is needed.`,
        action: refusal.action,
        needs: refusal.needs,
      };
    case 'unavailable':
      return { detail: refusal.message, remedy: refusal.remedy };
    case 'too-many-attempts':
    case 'too-many-listeners':
      return { detail: refusal.message, retryAfterS: refusal.retryAfterS };
    case 'not-signed-in':
    case 'demonstration-only':
    case 'too-large':
    case 'foreign-origin':
    case 'broken':
      return { detail: refusal.message };
  }
}

/** A problem as it goes over the wire. */
export function problemResponse(refusal: Refusal): Response {
  const problem = problemOf(refusal);
  const headers = new Headers({ 'content-type': 'application/problem+json', 'cache-control': 'no-store' });
  if (problem.retryAfterS !== undefined) headers.set('retry-after', String(problem.retryAfterS));
  return new Response(JSON.stringify(problem), { status: problem.status, headers });
}
