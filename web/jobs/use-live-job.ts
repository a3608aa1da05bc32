import type { LiveEvent } from '@clampwright/server/contract';
import { useQueryClient } from '@tanstack/react-query';
import { useEffect, useEffectEvent, useState } from 'react';
import { catchUp } from './job-query.ts';

/** How the stream of a job stands: `lost` while the browser tries to get it back. */
export type LiveState = 'opening' | 'open' | 'lost';

const isLiveEvent = (value: unknown): value is LiveEvent =>
  typeof value === 'object' && value !== null && 'kind' in value;

/**
 * Follows a job live: entries that others append are put on the job that is shown.
 *
 * @param hear     told of every event, such as the torque while the wrench is pulled
 * @param jointRef the joint that is worked on here: pulls of a connected wrench belong to it
 */
export function useLiveJob(jobId: string, hear?: (event: LiveEvent) => void, jointRef?: string): LiveState {
  const queries = useQueryClient();
  const [state, setState] = useState<LiveState>('opening');
  // Where it does not succeed, the stream itself tells that the server is away, and the next event tries again.
  const fetchMissing = useEffectEvent(() => void catchUp(queries, jobId).catch(() => setState('lost')));
  const told = useEffectEvent((event: LiveEvent) => {
    if (event.kind === 'entries') fetchMissing();
    hear?.(event);
  });
  useEffect(() => {
    const stream = new EventSource(`/api/v1/jobs/${jobId}/live${jointRef === undefined ? '' : `?joint=${jointRef}`}`);
    stream.addEventListener('open', () => {
      setState('open');
      fetchMissing();
    });
    stream.addEventListener('error', () => setState('lost'));
    stream.addEventListener('message', (message: MessageEvent<unknown>) => {
      const event: unknown = typeof message.data === 'string' ? JSON.parse(message.data) : undefined;
      if (isLiveEvent(event)) told(event);
    });
    return () => stream.close();
  }, [jobId, jointRef]);
  return state;
}
