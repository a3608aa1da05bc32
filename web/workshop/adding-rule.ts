import type { Person } from '@clampwright/server/contract';

/**
 * Who may add people: `first-lead` while the workshop has no lead of its own and whoever begins adds one; `lead` a
 * lead at this screen; `ask` nobody is at this screen, the name is asked for; `refused` somebody in another role.
 */
export type AddingRule = 'first-lead' | 'lead' | 'ask' | 'refused';

/** The server has the last word; this only spares a way that would be refused. */
export function addingRule(people: readonly Person[], me: Person | null): AddingRule {
  const hasOwnLead = people.some((person) => person.role === 'lead' && !person.demo);
  if (!hasOwnLead) return me?.role === 'lead' ? 'lead' : 'first-lead';
  if (!me) return 'ask';
  return me.role === 'lead' && !me.demo ? 'lead' : 'refused';
}
