import type { Field } from './fields.ts';

/** Which fields a form names so that nobody has to try: those that are needed, or those that are not. */
export interface Need {
  readonly kind: 'needed' | 'may-be-empty' | 'all-may-be-empty';
  readonly names: readonly string[];
}

/**
 * What is said once before the fields of a form, in place of a word behind each label: the shorter of both lists.
 *
 * @param decides name of a field that decides which others stand, and is named in neither list
 * @returns undefined where every field is needed, as whoever fills in a form expects
 */
export function needOf(fields: readonly Field[], decides?: string): Need | undefined {
  const namesOf = (isNeeded: boolean) =>
    fields.filter((field) => field.isNeeded === isNeeded && field.name !== decides).map(({ name }) => name);
  const [needed, others] = [namesOf(true), namesOf(false)];
  if (others.length === 0) return undefined;
  if (needed.length === 0) return { kind: 'all-may-be-empty', names: [] };
  return needed.length <= others.length ? { kind: 'needed', names: needed } : { kind: 'may-be-empty', names: others };
}
