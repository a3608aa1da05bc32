import { describe, expect, it } from 'vitest';
import { problemOf, problemResponse, type Refusal } from './problem.ts';

const CASES: readonly (readonly [Refusal, status: number, told: object])[] = [
  [
    { kind: 'invalid', field: 'torqueNm', message: 'too small', expected: 'at least 0' },
    400,
    { field: 'torqueNm', expected: 'at least 0', detail: 'torqueNm: too small' },
  ],
  [{ kind: 'not-signed-in', message: 'Sign in.' }, 401, { detail: 'Sign in.' }],
  [{ kind: 'forbidden', action: 'make a job', needs: 'lead' }, 403, { action: 'make a job', needs: 'lead' }],
  [{ kind: 'demonstration-only', message: 'Invented.' }, 403, {}],
  [{ kind: 'foreign-origin', message: 'Elsewhere.' }, 403, {}],
  [{ kind: 'not-found', what: 'job', id: '7' }, 404, { what: 'job', id: '7', detail: 'There is no job 7.' }],
  [{ kind: 'conflict', message: 'Taken.', current: { attemptCount: 2 } }, 409, { current: { attemptCount: 2 } }],
  [{ kind: 'too-large', message: 'Too much.' }, 413, {}],
  [{ kind: 'too-many-attempts', message: 'Wait.', retryAfterS: 60 }, 429, { retryAfterS: 60 }],
  [{ kind: 'broken', message: 'Sorry.' }, 500, {}],
  [
    { kind: 'unavailable', message: 'The disk is full.', remedy: 'Free some space.' },
    503,
    { detail: 'The disk is full.', remedy: 'Free some space.' },
  ],
  [{ kind: 'too-many-listeners', message: 'Wait.', retryAfterS: 30 }, 503, { retryAfterS: 30 }],
];

describe('a refusal over the wire (RFC 9457)', () => {
  it.each(CASES)('%o', async (refusal, status, told) => {
    const response = problemResponse(refusal);
    expect(response.status).toBe(status);
    expect(response.headers.get('content-type')).toBe('application/problem+json');
    expect(await response.json()).toMatchObject({ type: `urn:problem-type:${refusal.kind}`, status, ...told });
  });

  it('tells the browser too when to come back', () => {
    expect(
      problemResponse({ kind: 'too-many-attempts', message: 'Wait.', retryAfterS: 60 }).headers.get('retry-after'),
    ).toBe('60');
  });

  it('says no more than it was told', () => {
    expect(Object.keys(problemOf({ kind: 'broken', message: 'Sorry.' }))).toEqual([
      'type',
      'title',
      'status',
      'detail',
    ]);
  });
});
