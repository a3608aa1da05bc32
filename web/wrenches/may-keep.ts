import type { Person } from '@clampwright/server/contract';

export interface MayKeep {
  readonly register: boolean;
  readonly calibrate: boolean;
}

/**
 * What somebody may enter of the toolbox. Whoever is not signed in is asked for the name when it comes to it; the
 * server has the last word.
 */
export function mayKeep(person: Person | null | undefined): MayKeep {
  if (!person) return { register: true, calibrate: true };
  return { register: person.role === 'keeper' || person.role === 'lead', calibrate: person.role === 'keeper' };
}
