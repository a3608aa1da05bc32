import type { Person, Session } from '@clampwright/server/contract';
import { queryOptions, useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import { anything, get, having, listOf, send } from './api.ts';

const isSession = having<Session>('person', 'firstStart', 'demoLoaded');
const isPerson = having<Person>('id', 'name', 'role');

export const sessionQuery = queryOptions({ queryKey: ['session'], queryFn: () => get('/session', isSession) });
export const peopleQuery = queryOptions({ queryKey: ['people'], queryFn: () => get('/people', listOf(isPerson)) });

/** Who is at this screen; undefined while it is not known, null for somebody who only looks. */
export const usePerson = (): Person | null | undefined => useQuery(sessionQuery).data?.person;

/** Signs somebody in at this screen. */
export function useSignIn() {
  const queries = useQueryClient();
  return useMutation({
    mutationFn: (who: { readonly personId: string; readonly pin: string }) => send('POST', '/session', who, isSession),
    onSuccess: (session) => queries.setQueryData(sessionQuery.queryKey, session),
  });
}

/** Leaves the screen to the next pair of hands. */
export function useSignOut() {
  const queries = useQueryClient();
  return useMutation({
    mutationFn: () => send('DELETE', '/session', undefined, anything),
    onSuccess: () => queries.invalidateQueries({ queryKey: sessionQuery.queryKey }),
  });
}
