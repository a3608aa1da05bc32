import type { Asset } from '@clampwright/core/record';
import type { Job, NewJob } from '@clampwright/server/contract';
import { queryOptions, useMutation, useQueryClient } from '@tanstack/react-query';
import { get, having, listOf, send } from '../../app/api.ts';

const isAsset = having<Asset>('id', 'name', 'location');
const isJob = having<Job>('sheet', 'entries');

export const assetsQuery = queryOptions({ queryKey: ['assets'], queryFn: () => get('/assets', listOf(isAsset)) });

/** Opens a job. */
export function useMakeJob() {
  const queries = useQueryClient();
  return useMutation({
    mutationFn: (job: NewJob) => send('POST', '/jobs', job, isJob),
    onSuccess: () =>
      Promise.all(['jobs', 'assets', 'today'].map((key) => queries.invalidateQueries({ queryKey: [key] }))),
  });
}
