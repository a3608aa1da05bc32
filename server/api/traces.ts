import { failed, ok, type Result } from '@clampwright/core/failure';
import { traceSchema } from '@clampwright/core/record';
import { z } from 'zod';
import type { Deps } from '../deps.ts';
import { earlierTraces, type PullEntry } from '../traces/earlier-traces.ts';
import { anybody } from './access.ts';
import { earlierTracesSchema } from './contract.ts';
import { json } from './gives.ts';
import { jobParams } from './job-params.ts';
import { route } from './route.ts';

const entryParams = jobParams.extend({
  seq: z.coerce.number().int().positive().describe('number of the entry in the job'),
});

export const showTrace = route({
  method: 'get',
  path: '/jobs/{id}/entries/{seq}/trace',
  title: 'give the trace of a pull, every digit of it',
  access: anybody,
  takes: z.object({ params: entryParams }),
  gives: json(traceSchema),
  handle: async ({ params }, { store }) => {
    const pull = await pullIn(store, params);
    return pull.ok ? store.jobs.trace(pull.value.id) : pull;
  },
});

export const showEarlierTraces = route({
  method: 'get',
  path: '/jobs/{id}/entries/{seq}/earlier-traces',
  title: 'give what a pull is drawn over: the expected curve, and accepted ones of the same joint revision, thinned',
  access: anybody,
  takes: z.object({ params: entryParams }),
  gives: json(earlierTracesSchema),
  handle: async ({ params }, { store }) => {
    const pull = await pullIn(store, params);
    return pull.ok ? earlierTraces(store, params.id, pull.value) : pull;
  },
});

async function pullIn(
  { jobs }: Deps['store'],
  { id, seq }: { readonly id: string; readonly seq: number },
): Promise<Result<PullEntry>> {
  const entries = await jobs.entries(id, { afterSeq: seq - 1, limit: 1 });
  if (!entries.ok) return entries;
  const entry = entries.value[0];
  return entry?.body.kind === 'pull'
    ? ok({ id: entry.id, pull: entry.body.pull })
    : failed({ kind: 'not-found', what: 'pull with the number', id: String(seq) });
}
