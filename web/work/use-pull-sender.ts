import type { IncomingPull } from '@clampwright/core/record';
import { useQueryClient } from '@tanstack/react-query';
import { useCallback, useEffect, useState } from 'react';
import { Refusal, Unreachable } from '../app/api.ts';
import { sessionQuery } from '../app/session.ts';
import { useWho } from '../app/who.tsx';
import { catchUp, putEntriesOn, sendCommand } from '../jobs/job-query.ts';
import { NobodyActs } from '../jobs/use-command.ts';
import { type Clash, clashOf } from './clash.ts';
import { forgetUnsent, keepUnsent, unsentPulls } from './outbox.ts';

/** How the pull in hand stands. */
export type Sending =
  | { readonly kind: 'idle' }
  | { readonly kind: 'sending'; readonly pull: IncomingPull }
  /** Not acknowledged; kept at this device and tried again. */
  | { readonly kind: 'waiting'; readonly pull: IncomingPull; readonly error: Error }
  /** Not taken as it is; the figures stay in the form. */
  | { readonly kind: 'refused'; readonly pull: IncomingPull; readonly error: Error }
  /** Somebody else recorded this position meanwhile. */
  | { readonly kind: 'clash'; readonly pull: IncomingPull; readonly clash: Clash };

export interface PullSender {
  readonly sending: Sending;
  readonly send: (pull: IncomingPull) => void;
  /** Gives the pull in hand up; it was never acknowledged. */
  readonly drop: () => void;
}

const RETRY_MS = 3_000;
const IDLE = { kind: 'idle' } as const;

/**
 * Sends pulls one at a time. A pull is kept at this device until the server has acknowledged it, also over a closed
 * browser, and keeps its identity, so that trying again never records it twice.
 */
export function usePullSender(jobId: string, jointRef: string): PullSender {
  const queries = useQueryClient();
  const who = useWho();
  const [sending, setSending] = useState<Sending>(() => leftBehind(jobId, jointRef));

  const send = useCallback(
    async (pull: IncomingPull) => {
      keepUnsent(localStorage, { jobId, pull });
      setSending({ kind: 'sending', pull });
      try {
        if (!(await who.ask())) throw new NobodyActs('nobody is signed in');
        const result = await sendCommand(jobId, { command: pull });
        forgetUnsent(localStorage, pull.id);
        setSending(IDLE);
        putEntriesOn(queries, jobId, result.entries);
      } catch (error) {
        setSending(afterFailure(pull, error));
        if (error instanceof Refusal) void queries.invalidateQueries({ queryKey: sessionQuery.queryKey });
        // Where this does not get through either, the lost live stream says so.
        if (error instanceof Refusal && error.problem.status === 409)
          await catchUp(queries, jobId).catch(() => undefined);
      }
    },
    [jobId, queries, who],
  );

  const waiting = sending.kind === 'waiting' && !(sending.error instanceof NobodyActs) ? sending : undefined;
  useEffect(() => {
    if (!waiting) return undefined;
    const timer = setTimeout(() => void send(waiting.pull), RETRY_MS);
    return () => clearTimeout(timer);
  }, [waiting, send]);

  return {
    sending,
    send: (pull) => void send(pull),
    drop: () => {
      if (sending.kind !== 'idle') forgetUnsent(localStorage, sending.pull.id);
      setSending(IDLE);
    },
  };
}

/** A pull that an earlier visit could not hand over. */
function leftBehind(jobId: string, jointRef: string): Sending {
  const left = unsentPulls(localStorage).find((unsent) => unsent.jobId === jobId && unsent.pull.jointRef === jointRef);
  return left ? { kind: 'waiting', pull: left.pull, error: new Unreachable('left from an earlier visit') } : IDLE;
}

function afterFailure(pull: IncomingPull, error: unknown): Sending {
  if (!(error instanceof Error)) throw error;
  const status = error instanceof Refusal ? error.problem.status : 0;
  const clash = error instanceof Refusal && status === 409 ? clashOf(error.problem.current) : undefined;
  if (clash) return { kind: 'clash', pull, clash };
  // The pull itself was looked at and not taken: keeping it would not help.
  if (error instanceof Refusal && status >= 400 && status < 500 && status !== 401 && status !== 429) {
    forgetUnsent(localStorage, pull.id);
    return { kind: 'refused', pull, error };
  }
  return { kind: 'waiting', pull, error };
}
