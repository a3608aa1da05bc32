import type { ReferenceStandard } from '@clampwright/core/wrench';
import type { WrenchCare } from '@clampwright/server/contract';
import { queryOptions } from '@tanstack/react-query';
import { get, having, listOf } from '../app/api.ts';

const isCare = having<WrenchCare>('wrench', 'summaries', 'calibrations', 'checks', 'recalls');

export const careQuery = (wrenchId: string) =>
  queryOptions({
    queryKey: ['care', wrenchId],
    queryFn: () => get(`/toolbox/wrenches/${wrenchId}/care`, isCare),
  });

const isReferences = listOf(having<ReferenceStandard>('id', 'name', 'dueOn'));

export const referencesQuery = queryOptions({
  queryKey: ['references'],
  queryFn: () => get('/references', isReferences),
});
