import { ok } from '@clampwright/core/failure';
import type { Person } from '../api/contract.ts';
import type { Outcome } from '../api/problem.ts';
import type { Deps } from '../deps.ts';

const only = (message: string): Outcome<never> => ({ ok: false, failure: { kind: 'demonstration-only', message } });

/**
 * The PIN of the demonstration's people is known to everybody. So they act for the workshop only while it has
 * nobody of its own, and what they make belongs to the demonstration.
 */
export async function mayActForWorkshop(person: Person, { store }: Pick<Deps, 'store'>): Promise<Outcome<Person>> {
  if (!person.demo) return ok(person);
  const people = await store.people.list();
  if (!people.ok) return people;
  if (people.value.every(({ demo }) => demo)) return ok(person);
  return only(`${person.name} belongs to the demonstration. Sign in as one of the workshop’s own people.`);
}

/** On a job of the workshop's own, nobody of the demonstration works or gives their word. */
export function mayWorkOn(
  job: { readonly demo: boolean },
  people: readonly (Person | undefined)[],
): Outcome<undefined> {
  const invented = people.find((person) => person?.demo);
  if (job.demo || !invented) return ok(undefined);
  return only(
    `${invented.name} belongs to the demonstration and works on its jobs only. Sign in as one of the workshop’s own people.`,
  );
}
