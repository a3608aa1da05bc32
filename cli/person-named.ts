import { invalid, ok, type Result } from '@clampwright/core/failure';
import type { Person, Store } from '@clampwright/store';

const FIELD = '--as';

/** Somebody who may work on a job, by name or id. */
export async function personNamed({ people }: Pick<Store, 'people'>, name: string): Promise<Result<Person>> {
  const all = await people.list();
  if (!all.ok) return all;
  const workers = all.value.filter(({ role }) => role === 'technician' || role === 'lead');
  const [person, another] = all.value.filter((candidate) => candidate.id === name || candidate.name === name);
  if (!person)
    return invalid(
      FIELD,
      `there is nobody called ${name}`,
      namesOf(workers) || 'somebody; the workshop has nobody yet',
    );
  if (another) return invalid(FIELD, `more than one is called ${name}`, 'the id of one of them');
  if (workers.includes(person)) return ok(person);
  return invalid(
    FIELD,
    `${name} is a ${person.role} and does not work on jobs`,
    `a technician or lead: ${namesOf(workers)}`,
  );
}

const namesOf = (people: readonly Person[]): string => people.map(({ name }) => name).join(', ');
