import { assetSchema } from '@clampwright/core/record';
import { z } from 'zod';
import { anybody, onlyFor } from './access.ts';
import { json } from './gives.ts';
import { route } from './route.ts';

export const listAssets = route({
  method: 'get',
  path: '/assets',
  title: 'list the assets',
  access: anybody,
  takes: z.object({}),
  gives: json(z.array(assetSchema)),
  handle: (_, { store }) => store.assets.list(),
});

export const addAsset = route({
  method: 'post',
  path: '/assets',
  title: 'add an asset',
  access: onlyFor('lead'),
  takes: z.object({ body: assetSchema }),
  gives: json(assetSchema, 201),
  handle: ({ body }, { store }, { demo }) => store.assets.add(body, { demo }),
});
