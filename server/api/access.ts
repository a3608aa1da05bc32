import { failed, ok, type Role } from '@clampwright/core/failure';
import type { Deps } from '../deps.ts';
import { mayActForWorkshop } from '../guard/demo.ts';
import type { Person } from './contract.ts';
import type { Outcome } from './problem.ts';

/** Who may ask. `admit` gives the handler what it may rely on: a person, or perhaps nobody. */
export interface Access<Who> {
  readonly roles: readonly Role[] | 'anybody';
  readonly admit: (person: Person | undefined, action: string, deps: Deps) => Outcome<Who> | Promise<Outcome<Who>>;
}

/** Looking needs no sign-in: whoever stands at this machine may read. */
export const anybody: Access<Person | undefined> = { roles: 'anybody', admit: (person) => ok(person) };

/** The first role is told as what is needed. */
function inRole(roles: readonly [Role, ...Role[]], person: Person | undefined, action: string): Outcome<Person> {
  if (!person) return { ok: false, failure: { kind: 'not-signed-in', message: `Sign in first to ${action}.` } };
  return roles.includes(person.role) ? ok(person) : failed({ kind: 'forbidden', action, needs: roles[0] });
}

const WORKERS = ['technician', 'lead'] as const satisfies readonly Role[];

export const isWorker = (person: Person | undefined): boolean => WORKERS.some((role) => role === person?.role);

/** Those who do the work of a job. */
export const workers: Access<Person> = { roles: WORKERS, admit: (person, action) => inRole(WORKERS, person, action) };

/** People of these roles, acting for the whole workshop. */
export function onlyFor(...roles: readonly [Role, ...Role[]]): Access<Person> {
  return {
    roles,
    admit: (person, action, deps) => {
      const fits = inRole(roles, person, action);
      return fits.ok ? mayActForWorkshop(fits.value, deps) : fits;
    },
  };
}
