import { invalid, ok } from '@clampwright/core/failure';
import { z } from 'zod';
import { takeFile } from '../imports/take-file.ts';
import { workers } from './access.ts';
import { importQuerySchema, importResultSchema } from './contract.ts';
import { json } from './gives.ts';
import { jobParams } from './job-params.ts';
import { mappingMeant } from './mappings.ts';
import { route } from './route.ts';

export const importFile = route({
  method: 'post',
  path: '/jobs/{id}/imports',
  title: 'take pulls from a file',
  access: workers,
  takes: z.object({ params: jobParams, query: importQuerySchema }),
  streams: ['text/csv', 'application/octet-stream'],
  gives: json(importResultSchema),
  handle: async ({ params, query }, deps, by, c) => {
    const mapping = await mappingMeant(deps.store, query.mapping);
    if (!mapping.ok) return mapping;
    const bytes = c.req.raw.body;
    if (!bytes) return invalid('(whole input)', 'no file was sent', 'the file as body of the request');
    const { mode, joint: jointRef, fileName } = query;
    const taken = await takeFile(deps, {
      jobId: params.id,
      bytes,
      mapping: mapping.value,
      mode,
      jointRef,
      fileName,
      by,
    });
    if (!taken.ok) return taken;
    const { result, afterSeq } = taken.value;
    if (afterSeq !== undefined) deps.listeners.tell(params.id, { kind: 'entries', afterSeq });
    return ok(result);
  },
});
