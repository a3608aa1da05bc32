import { newOwnRowSchema, ownRowSchema } from '@clampwright/core/fastener';
import { z } from 'zod';
import { anybody, onlyFor } from './access.ts';
import { json } from './gives.ts';
import { route } from './route.ts';

export const listOwnRows = route({
  method: 'get',
  path: '/own-rows',
  title: 'list the workshop’s own bolts, materials and lubricants, superseded ones too',
  access: anybody,
  takes: z.object({}),
  gives: json(z.array(ownRowSchema)),
  handle: (_, { store }) => store.ownRows.list(),
});

export const addOwnRow = route({
  method: 'post',
  path: '/own-rows',
  title: 'add an own bolt, material or lubricant',
  access: onlyFor('lead'),
  takes: z.object({ body: newOwnRowSchema }),
  gives: json(ownRowSchema, 201),
  handle: ({ body }, { store, now }, { id, name, demo }) =>
    store.ownRows.add({ ...body, by: { id, name }, addedAt: now().toISOString() }, { demo }),
});
