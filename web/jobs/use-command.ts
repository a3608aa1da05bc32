import type { Command } from '@clampwright/core/record';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import { Refusal } from '../app/api.ts';
import { sessionQuery } from '../app/session.ts';
import { useWho } from '../app/who.tsx';
import { putEntriesOn, sendCommand } from './job-query.ts';

/** A lead's word given at somebody else's screen. */
export interface LeadWord {
  readonly personId: string;
  readonly pin: string;
}

export interface Asked {
  readonly command: Command;
  readonly lead?: LeadWord | undefined;
}

/** Said when nobody wanted to tell who is working; nothing was sent. */
export class NobodyActs extends Error {}

/** Asks something of a job, in the name of whoever works at this screen; asks who that is where it is not known. */
export function useCommand(jobId: string) {
  const queries = useQueryClient();
  const who = useWho();
  return useMutation({
    mutationFn: async ({ command, lead }: Asked) => {
      if (!(await who.ask())) throw new NobodyActs('nobody is signed in');
      return sendCommand(jobId, lead ? { command, lead } : { command });
    },
    onSuccess: (result) => putEntriesOn(queries, jobId, result.entries),
    onError: (error) => {
      // The session ended while the screen stood open: the next try asks who is working.
      if (error instanceof Refusal && error.problem.status === 401) {
        void queries.invalidateQueries({ queryKey: sessionQuery.queryKey });
      }
    },
  });
}
