import type { Trace } from '@clampwright/core/record';
import type { EarlierTraces } from '@clampwright/server/contract';
import { queryOptions } from '@tanstack/react-query';
import { get, having } from '../app/api.ts';

const isTrace = having<Trace>('timeS', 'angleDeg', 'torqueNm');
const isEarlier = having<EarlierTraces>('curves');

/** The trace of a pull; it never changes. */
export const traceQuery = (jobId: string, seq: number) =>
  queryOptions({
    queryKey: ['trace', jobId, seq],
    queryFn: ({ signal }) => get(`/jobs/${jobId}/entries/${seq}/trace`, isTrace, signal),
    staleTime: Number.POSITIVE_INFINITY,
    structuralSharing: false,
  });

/** What the pull is drawn over; grows with the work. */
export const earlierTracesQuery = (jobId: string, seq: number) =>
  queryOptions({
    queryKey: ['earlier-traces', jobId, seq],
    queryFn: ({ signal }) => get(`/jobs/${jobId}/entries/${seq}/earlier-traces`, isEarlier, signal),
    structuralSharing: false,
  });
