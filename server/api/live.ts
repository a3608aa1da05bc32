import { ok } from '@clampwright/core/failure';
import { z } from 'zod';
import { liveStream } from '../live/stream.ts';
import { anybody, isWorker } from './access.ts';
import { liveEventSchema } from './contract.ts';
import { media } from './gives.ts';
import { jobParams } from './job-params.ts';
import { route } from './route.ts';

export const listen = route({
  method: 'get',
  path: '/jobs/{id}/live',
  title: 'listen to what happens on a job (server-sent events, one of these in each)',
  access: anybody,
  takes: z.object({
    params: jobParams,
    query: z.strictObject({
      joint: z
        .string()
        .optional()
        .describe('joint that is worked on at this screen: pulls of a connected wrench belong to it'),
    }),
  }),
  gives: media('text/event-stream', liveEventSchema),
  handle: async ({ params, query }, { store, listeners, ports, closing }, who) => {
    const job = await store.jobs.get(params.id);
    if (!job.ok) return job;
    // Somebody who only looks moves no wrench.
    if (query.joint !== undefined && isWorker(who)) ports.attend(params.id, query.joint);
    const stream = liveStream(params.id, listeners, closing);
    if (stream) return ok(stream);
    return {
      ok: false,
      failure: {
        kind: 'too-many-listeners',
        message: 'Too many screens listen already; close some of them.',
        retryAfterS: 30,
      },
    };
  },
});
