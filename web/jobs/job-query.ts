import type { Entry } from '@clampwright/core/record';
import type { CommandResult, Job } from '@clampwright/server/contract';
import { type QueryClient, queryOptions } from '@tanstack/react-query';
import { get, having, listOf, send } from '../app/api.ts';
import { type JobInHand, jobFrom, jobWith } from './job-in-hand.ts';
import { jobsQuery } from './jobs-query.ts';

const isEntry = having<Entry>('seq', 'id', 'body', 'hash');
const isJob = having<Job>('sheet', 'entries');
export const isCommandResult = having<CommandResult>('entries', 'already');

/** One job, folded. It stays as it is until entries are put on; the live stream tells when. */
export const jobQuery = (jobId: string) =>
  queryOptions({
    queryKey: ['job', jobId],
    queryFn: async ({ signal }) => jobFrom((await get(`/jobs/${jobId}`, isJob, signal)).entries),
    structuralSharing: false,
  });

/** Puts entries on the job that is shown; fetches it anew where some are missing. */
export function putEntriesOn(queries: QueryClient, jobId: string, entries: readonly Entry[]): void {
  const { queryKey } = jobQuery(jobId);
  const job: JobInHand | undefined = queries.getQueryData(queryKey);
  const longer = job && jobWith(job, entries);
  if (longer) queries.setQueryData(queryKey, longer);
  else void queries.invalidateQueries({ queryKey });
  void queries.invalidateQueries({ queryKey: jobsQuery.queryKey });
  void queries.invalidateQueries({ queryKey: ['today'] });
}

/** Fetches what was appended after the last entry that this screen knows. */
export async function catchUp(queries: QueryClient, jobId: string): Promise<void> {
  const job = queries.getQueryData(jobQuery(jobId).queryKey);
  if (!job) return;
  putEntriesOn(queries, jobId, await get(`/jobs/${jobId}/entries?after=${job.state.lastSeq}`, listOf(isEntry)));
}

/** Sends one command; throws `Refusal` or `Unreachable`. */
export const sendCommand = (jobId: string, body: unknown): Promise<CommandResult> =>
  send('POST', `/jobs/${jobId}/commands`, body, isCommandResult);
