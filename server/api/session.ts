import { ok, type Result } from '@clampwright/core/failure';
import { z } from 'zod';
import type { Deps } from '../deps.ts';
import { personByPin } from '../guard/pin.ts';
import { beginSession, endSession } from '../guard/session.ts';
import { anybody } from './access.ts';
import { type Person, type Session, sessionSchema, signInSchema } from './contract.ts';
import { json, nothing } from './gives.ts';
import { route } from './route.ts';

export const showSession = route({
  method: 'get',
  path: '/session',
  title: 'tell who is at this screen',
  access: anybody,
  takes: z.object({}),
  gives: json(sessionSchema),
  handle: (_, deps, who) => sessionOf(deps, who),
});

export const signIn = route({
  method: 'post',
  path: '/session',
  title: 'sign in at this screen',
  access: anybody,
  takes: z.object({ body: signInSchema }),
  gives: json(sessionSchema),
  handle: async ({ body }, deps, _, c) => {
    const person = await personByPin(deps, body.personId, body.pin);
    if (!person.ok) return person;
    const begun = await beginSession(c, deps, person.value.id);
    return begun.ok ? sessionOf(deps, person.value) : begun;
  },
});

export const signOut = route({
  method: 'delete',
  path: '/session',
  title: 'leave this screen',
  access: anybody,
  takes: z.object({}),
  gives: nothing,
  handle: (_, deps, _who, c) => endSession(c, deps),
});

async function sessionOf({ store }: Deps, person: Person | undefined): Promise<Result<Session>> {
  const people = await store.people.list();
  if (!people.ok) return people;
  const demo = await store.demo.state();
  if (!demo.ok) return demo;
  return ok({ person: person ?? null, firstStart: people.value.length === 0, demoLoaded: demo.value === 'loaded' });
}
