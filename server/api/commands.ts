import { ok } from '@clampwright/core/failure';
import { z } from 'zod';
import type { Deps } from '../deps.ts';
import { enter } from '../door.ts';
import { personByPin } from '../guard/pin.ts';
import { workers } from './access.ts';
import { commandResultSchema, leadWordSchema, type Person, postCommandSchema } from './contract.ts';
import { json } from './gives.ts';
import { jobParams } from './job-params.ts';
import type { Outcome } from './problem.ts';
import { route } from './route.ts';

/** A trace of the longest kind, 200,000 samples of three figures, is about this long. */
const MAXIMUM_BYTES = 16 * 2 ** 20;

export const postCommand = route({
  method: 'post',
  path: '/jobs/{id}/commands',
  title: 'work on a job',
  access: workers,
  takes: z.object({ params: jobParams, body: postCommandSchema }),
  gives: json(commandResultSchema),
  maximumBytes: MAXIMUM_BYTES,
  handle: async ({ params, body }, deps, by) => {
    const lead = await leadGivingWord(deps, body.lead);
    return lead.ok ? enter(deps, params.id, body.command, { by, lead: lead.value }) : lead;
  },
});

/** A word counts once it is known to be a lead's. */
async function leadGivingWord(
  deps: Deps,
  word: z.infer<typeof leadWordSchema> | undefined,
): Promise<Outcome<Person | undefined>> {
  if (!word) return ok(undefined);
  const person = await personByPin(deps, word.personId, word.pin);
  if (!person.ok || person.value.role === 'lead') return person;
  return { ok: false, failure: { kind: 'forbidden', action: 'give a lead’s word', needs: 'lead' } };
}
