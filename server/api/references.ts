import { invalid } from '@clampwright/core/failure';
import { referenceStandardSchema } from '@clampwright/core/wrench';
import { z } from 'zod';
import { anybody, onlyFor } from './access.ts';
import { json } from './gives.ts';
import { route } from './route.ts';

export const listReferences = route({
  method: 'get',
  path: '/references',
  title: 'list the reference standards, each with its newest certificate',
  access: anybody,
  takes: z.object({}),
  gives: json(z.array(referenceStandardSchema)),
  handle: (_, { store }) => store.references.list(),
});

export const showReference = route({
  method: 'get',
  path: '/references/{id}/certificates',
  title: 'list the certificates of a reference standard',
  access: anybody,
  takes: z.object({ params: z.object({ id: z.uuid() }) }),
  gives: json(z.array(referenceStandardSchema)),
  handle: ({ params }, { store }) => store.references.history(params.id),
});

export const keepReference = route({
  method: 'post',
  path: '/references',
  title: 'add a reference standard, or a newer certificate of one',
  access: onlyFor('keeper'),
  takes: z.object({ body: referenceStandardSchema }),
  gives: json(referenceStandardSchema, 201),
  handle: ({ body }, { store, now }, { demo }) => {
    const today = now().toISOString().slice(0, 10);
    if (body.calibratedOn > today)
      return invalid('calibratedOn', `${body.calibratedOn} has not come yet`, `a day up to ${today}`);
    if (body.dueOn <= body.calibratedOn)
      return invalid('dueOn', `${body.dueOn} does not lie after the calibration`, `a day after ${body.calibratedOn}`);
    if (body.highestNm <= body.lowestNm)
      return invalid('highestNm', 'the range ends where it begins, or before', `more than ${body.lowestNm}`);
    return store.references.keep(body, { demo });
  },
});
