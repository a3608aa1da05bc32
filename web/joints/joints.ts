import type { JointContent, JointRevision } from '@clampwright/core/joint';
import type { JointHistory, JointListItem } from '@clampwright/server/contract';
import { queryOptions, useMutation, useQueryClient } from '@tanstack/react-query';
import { get, having, listOf, send } from '../app/api.ts';

const isListItem = having<JointListItem>('id', 'name', 'latestRevision', 'latestStatus');
const isHistory = having<JointHistory>('revisions', 'demo');
const isRevision = having<JointRevision>('id', 'revision', 'status', 'content');

export const jointsQuery = queryOptions({ queryKey: ['joints'], queryFn: () => get('/joints', listOf(isListItem)) });

export const jointQuery = (jointId: string) =>
  queryOptions({
    queryKey: ['joints', jointId],
    queryFn: ({ signal }) => get(`/joints/${jointId}`, isHistory, signal),
  });

/** Keeps a draft: makes the joint, changes its draft, or begins a revision after a released one. */
export function useSaveJoint() {
  const queries = useQueryClient();
  return useMutation({
    mutationFn: (joint: { readonly id: string; readonly content: JointContent }) =>
      send('POST', '/joints', joint, isRevision),
    onSuccess: () => queries.invalidateQueries({ queryKey: jointsQuery.queryKey }),
  });
}

/** Releases the draft; from then on it is never edited. */
export function useReleaseJoint() {
  const queries = useQueryClient();
  return useMutation({
    mutationFn: (jointId: string) => send('POST', `/joints/${jointId}/release`, undefined, isRevision),
    onSuccess: () => queries.invalidateQueries({ queryKey: jointsQuery.queryKey }),
  });
}
