import type { Toolbox } from '@clampwright/server/contract';
import { queryOptions } from '@tanstack/react-query';
import { get, having } from '../app/api.ts';

const isToolbox = having<Toolbox>('wrenches', 'adapters', 'extensions');

export const toolboxQuery = queryOptions({ queryKey: ['toolbox'], queryFn: () => get('/toolbox', isToolbox) });
