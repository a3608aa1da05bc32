import type { JobListItem } from '@clampwright/server/contract';
import { queryOptions } from '@tanstack/react-query';
import { get, having, listOf } from '../app/api.ts';

const isListItem = having<JobListItem>('id', 'title', 'status', 'done', 'total');

/** Every job as a list shows it, the one last worked on first. */
export const jobsQuery = queryOptions({ queryKey: ['jobs'], queryFn: () => get('/jobs', listOf(isListItem)) });
