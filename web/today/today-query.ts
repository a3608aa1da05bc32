import type { Today } from '@clampwright/server/contract';
import { queryOptions } from '@tanstack/react-query';
import { get, having } from '../app/api.ts';

const isToday = having<Today>('jobs', 'wrenches', 'retorques');

export const todayQuery = queryOptions({ queryKey: ['today'], queryFn: () => get('/today', isToday) });
