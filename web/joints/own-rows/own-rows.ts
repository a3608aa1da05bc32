import type { NewOwnRow, OwnRow } from '@clampwright/core/fastener';
import { queryOptions, useMutation, useQueryClient } from '@tanstack/react-query';
import { get, having, listOf, send } from '../../app/api.ts';

const isOwnRow = having<OwnRow>('id', 'kind', 'name', 'source', 'by', 'addedAt');

export const ownRowsQuery = queryOptions({
  queryKey: ['own-rows'],
  queryFn: () => get('/own-rows', listOf(isOwnRow)),
});

/** Adds a row, perhaps in the place of another; nothing is ever edited. */
export function useAddOwnRow() {
  const queries = useQueryClient();
  return useMutation({
    mutationFn: (row: NewOwnRow) => send('POST', '/own-rows', row, isOwnRow),
    onSuccess: () => queries.invalidateQueries({ queryKey: ownRowsQuery.queryKey }),
  });
}
