import type { Assumption } from '@clampwright/core/wrench';
import type { RecallListItem, RecallPage } from '@clampwright/server/contract';
import { queryOptions } from '@tanstack/react-query';
import { get, having, listOf } from '../app/api.ts';

const isPage = having<RecallPage>('recall', 'wrench', 'lines', 'total');

/** Which of the assumptions decides the order; `worst`: the greatest chance of the three. */
export type Assumed = Assumption | 'worst';

/** For the address of a list under an assumption. */
export const assumedQuery = (assumed: Assumed): string => (assumed === 'worst' ? '' : `assumption=${assumed}&`);

export const recallQuery = (recallId: string, assumed: Assumed, limit: number) =>
  queryOptions({
    queryKey: ['recall', recallId, assumed, limit],
    queryFn: () => get(`/recalls/${recallId}?${assumedQuery(assumed)}limit=${limit}`, isPage),
    placeholderData: (before) => before,
  });

export const recallsQuery = queryOptions({
  queryKey: ['recalls'],
  queryFn: () => get('/recalls', listOf(having<RecallListItem>('recall', 'wrench', 'pulls'))),
});
