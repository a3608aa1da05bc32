import { ok } from '@clampwright/core/failure';
import { hash, verify } from '@node-rs/argon2';
import type { Person } from '../api/contract.ts';
import type { Outcome } from '../api/problem.ts';
import type { Deps } from '../deps.ts';

/** A PIN is short, so each guess is made dear: Argon2id, 64 MiB, 3 passes (RFC 9106, section 4, second option). */
const COST = { memoryCost: 65_536, timeCost: 3, parallelism: 1 };

export const hashPin = (pin: string): Promise<string> => hash(pin, COST);

const wrongPin = (message: string): Outcome<never> => ({ ok: false, failure: { kind: 'not-signed-in', message } });

/** The person of this identity, once their PIN was told right. */
export async function personByPin(
  { store, attempts, now }: Deps,
  personId: string,
  pin: string,
): Promise<Outcome<Person>> {
  const found = await store.people.get(personId);
  if (!found.ok) return found;
  const { pinHash, ...person } = found.value;
  if (pinHash === undefined) return wrongPin(`${person.name} has no PIN and cannot sign in.`);
  const retryAfterS = attempts.begin(personId, now().getTime());
  if (retryAfterS !== undefined) return tooMany(retryAfterS);
  if (!(await verify(pinHash, pin))) return wrongPin(`This is not the PIN of ${person.name}; try again.`);
  attempts.succeed(personId);
  return ok(person);
}

const tooMany = (retryAfterS: number): Outcome<never> => ({
  ok: false,
  failure: {
    kind: 'too-many-attempts',
    message: `Too many wrong PINs; try again in ${Math.ceil(retryAfterS / 60)} minutes.`,
    retryAfterS,
  },
});
