import type { ReferenceStandard } from '@clampwright/core/wrench';
import type { DueItem, WrenchCare } from '@clampwright/server/contract';
import { queryOptions } from '@tanstack/react-query';
import { get, having, listOf } from '../app/api.ts';

const isCare = having<WrenchCare>('wrench', 'summaries', 'calibrations', 'checks', 'recalls');

export const careQuery = (wrenchId: string) =>
  queryOptions({
    queryKey: ['care', wrenchId],
    queryFn: () => get(`/toolbox/wrenches/${wrenchId}/care`, isCare),
  });

/** Below `toolbox`, since whatever changes a wrench may change when it is due. */
export const dueQuery = queryOptions({
  queryKey: ['toolbox', 'due'],
  queryFn: () => get('/due', listOf(having<DueItem>('kind', 'id', 'state'))),
});

const isReferences = listOf(having<ReferenceStandard>('id', 'name', 'dueOn'));

export const referencesQuery = queryOptions({
  queryKey: ['references'],
  queryFn: () => get('/references', isReferences),
});
