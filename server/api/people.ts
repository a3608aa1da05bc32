import { failed, invalid, ok } from '@clampwright/core/failure';
import { z } from 'zod';
import { newId } from '../deps.ts';
import { hashPin } from '../guard/pin.ts';
import { anybody } from './access.ts';
import { newPersonSchema, type Person, personSchema } from './contract.ts';
import { json } from './gives.ts';
import type { Outcome } from './problem.ts';
import { route } from './route.ts';

export const listPeople = route({
  method: 'get',
  path: '/people',
  title: 'list the people',
  access: anybody,
  takes: z.object({}),
  gives: json(z.array(personSchema)),
  handle: (_, { store }) => store.people.list(),
});

export const addPerson = route({
  method: 'post',
  path: '/people',
  title: 'add a person',
  access: anybody,
  takes: z.object({ body: newPersonSchema }),
  gives: json(personSchema, 201),
  handle: async ({ body: { name, role, pin } }, deps, who) => {
    const people = await deps.store.people.list();
    if (!people.ok) return people;
    const refusal = mayAdd(who, role, people.value);
    if (!refusal.ok) return refusal;
    return deps.store.people.add({ id: newId(deps), name, role, pinHash: await hashPin(pin) });
  },
});

/** A lead adds people. While the workshop has no lead of its own, whoever begins adds the first. */
function mayAdd(who: Person | undefined, role: Person['role'], people: readonly Person[]): Outcome<undefined> {
  const ownLead = people.some((person) => person.role === 'lead' && !person.demo);
  if (who?.role === 'lead' && (!who.demo || !ownLead)) return ok(undefined);
  if (ownLead) return who ? failed({ kind: 'forbidden', action: 'add a person', needs: 'lead' }) : notSignedIn;
  return role === 'lead'
    ? ok(undefined)
    : invalid('role', 'the first person adds all others and so must be a lead', 'lead');
}

const notSignedIn: Outcome<never> = {
  ok: false,
  failure: { kind: 'not-signed-in', message: 'Sign in first to add a person.' },
};
