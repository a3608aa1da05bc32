import { ok } from '@clampwright/core/failure';
import { z } from 'zod';
import { anybody } from './access.ts';
import { json } from './gives.ts';
import { route } from './route.ts';

export const health = route({
  method: 'get',
  path: '/health',
  title: 'tell whether it runs',
  access: anybody,
  takes: z.object({}),
  gives: json(z.strictObject({ status: z.literal('ok') })),
  handle: () => ok({ status: 'ok' as const }),
});
