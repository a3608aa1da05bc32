import { createHash } from 'node:crypto';
import { ok, type Result } from '@clampwright/core/failure';
import type { Context } from 'hono';
import { deleteCookie, getCookie, setCookie } from 'hono/cookie';
import type { Person } from '../api/contract.ts';
import type { Deps } from '../deps.ts';

export const SESSION_COOKIE = 'clampwright-session';
const TOKEN_BYTES = 32;
/** Longer than a shift; whoever comes back next morning signs in again. */
const LASTS_S = 12 * 3600;

const hashOf = (token: string): string => createHash('sha256').update(token).digest('hex');

/** Signs somebody in at this screen: the browser gets the token, the store its hash alone. */
export async function beginSession(
  c: Context,
  { store, now, random }: Deps,
  personId: string,
): Promise<Result<unknown>> {
  const token = Buffer.from(random(TOKEN_BYTES)).toString('base64url');
  const expiresAt = new Date(now().getTime() + 1000 * LASTS_S).toISOString();
  const begun = await store.sessions.begin({ tokenHash: hashOf(token), personId, expiresAt });
  if (begun.ok) setCookie(c, SESSION_COOKIE, token, { httpOnly: true, sameSite: 'Strict', path: '/', maxAge: LASTS_S });
  return begun;
}

/** Signs off at this screen; also where nobody was signed in. */
export async function endSession(c: Context, { store, now }: Deps): Promise<Result<undefined>> {
  const token = deleteCookie(c, SESSION_COOKIE, { path: '/' });
  return token === undefined ? ok(undefined) : store.sessions.end(hashOf(token), now().toISOString());
}

/** Who is signed in at the screen that asks. */
export async function personOf(c: Context, { store, now }: Deps): Promise<Result<Person | undefined>> {
  const token = getCookie(c, SESSION_COOKIE);
  if (token === undefined) return ok(undefined);
  const session = await store.sessions.find(hashOf(token), now().toISOString());
  if (!session.ok) return session.failure.kind === 'not-found' ? ok(undefined) : session;
  const person = await store.people.get(session.value.personId);
  if (!person.ok) return person.failure.kind === 'not-found' ? ok(undefined) : person;
  const { pinHash: _, ...shown } = person.value;
  return ok(shown);
}
