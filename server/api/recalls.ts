import { failed, ok, type Result } from '@clampwright/core/failure';
import { recallDocument } from '@clampwright/core/record';
import { type Assumption, assumptionSchema, recallSchema, recheckSchema } from '@clampwright/core/wrench';
import type { Store } from '@clampwright/store';
import { z } from 'zod';
import { recallFrom } from '../recalls/open-recall.ts';
import { recallShown, spanOf } from '../recalls/recall-pulls.ts';
import { anybody, onlyFor } from './access.ts';
import {
  newRecallSchema,
  newRecheckSchema,
  type RecallListItem,
  recallListItemSchema,
  recallPageSchema,
  recallQuerySchema,
} from './contract.ts';
import { json, media } from './gives.ts';
import { PAPER_FORMS, paperQuery, paperResponse } from './paper.ts';
import { type Route, route } from './route.ts';

export const recallParams = z.object({ id: z.uuid() });

export const listRecalls = route({
  method: 'get',
  path: '/recalls',
  title: 'list the recalls and how far each is',
  access: anybody,
  takes: z.object({}),
  gives: json(z.array(recallListItemSchema)),
  handle: (_, { store }) => recallItems(store),
});

/** The recalls, newest first, with how many of their pulls were looked at. */
export async function recallItems(store: Store): Promise<Result<readonly RecallListItem[]>> {
  const recalls = await store.care.recalls.list();
  if (!recalls.ok) return recalls;
  const items: RecallListItem[] = [];
  for (const recall of recalls.value.toReversed()) {
    const wrench = await store.wrenches.get(recall.wrenchId);
    if (!wrench.ok) return wrench;
    const pulls = await store.pulls.count(recall.wrenchId, spanOf(recall));
    if (!pulls.ok) return pulls;
    const rechecks = await store.care.rechecks.list(recall.id);
    if (!rechecks.ok) return rechecks;
    const rechecked = new Set(rechecks.value.map(({ pullId }) => pullId)).size;
    items.push({ recall, wrench: wrench.value, pulls: pulls.value, rechecked });
  }
  return ok(items);
}

export const openRecall = route({
  method: 'post',
  path: '/recalls',
  title: 'open a recall',
  access: onlyFor('keeper', 'lead'),
  takes: z.object({ body: newRecallSchema }),
  gives: json(recallSchema, 201),
  handle: async ({ body }, { store, now }, { name }) => {
    const already = await store.care.recalls.get(body.id);
    if (already.ok) return already;
    const recall = await recallFrom(store, body, { raisedAt: now().toISOString(), by: name });
    return recall.ok ? store.care.recalls.append(recall.value) : recall;
  },
});

export const showRecall = route({
  method: 'get',
  path: '/recalls/{id}',
  title: 'show the pulls of a recall, the gravest first',
  access: anybody,
  takes: z.object({ params: recallParams, query: recallQuerySchema }),
  gives: json(recallPageSchema),
  handle: async ({ params, query: { assumption, offset, limit } }, { store }) => {
    const shown = await recallShown(store, params.id, assumption);
    if (!shown.ok) return shown;
    const { recall, wrench, lines } = shown.value;
    const expected = (one: Assumption) => lines.reduce((sum, { under }) => sum + under[one].outside, 0);
    return ok({
      recall,
      wrench,
      lines: lines.slice(offset, offset + limit),
      total: lines.length,
      rechecked: lines.filter(({ recheck }) => recheck).length,
      expectedOutside: {
        'at-once': expected('at-once'),
        'with-time': expected('with-time'),
        'with-pulls': expected('with-pulls'),
      },
    });
  },
});

export const addRecheck = route({
  method: 'post',
  path: '/recalls/{id}/rechecks',
  title: 'say what was done about a pull of a recall',
  access: onlyFor('technician', 'lead', 'keeper'),
  takes: z.object({ params: recallParams, body: newRecheckSchema }),
  gives: json(recheckSchema, 201),
  handle: async ({ params, body }, { store, now }, { name }) => {
    const recall = await store.care.recalls.get(params.id);
    if (!recall.ok) return recall;
    const already = await store.care.rechecks.get(body.id);
    if (already.ok) return already;
    const pulls = await store.pulls.of(recall.value.wrenchId, spanOf(recall.value));
    if (!pulls.ok) return pulls;
    if (!pulls.value.some(({ pullId }) => pullId === body.pullId))
      return failed({ kind: 'not-found', what: 'pull of this recall', id: body.pullId });
    return store.care.rechecks.append({ ...body, recallId: params.id, at: now().toISOString(), by: name });
  },
});

const paperOfRecall = paperQuery.extend({ assumption: assumptionSchema.optional() });

/** The list to go out with, in each form. */
export const recallPapers: readonly Route[] = PAPER_FORMS.map((form) =>
  route({
    method: 'get',
    path: `/recalls/{id}/list.${form.extension}`,
    title: `give the list of a recall as ${form.extension.toUpperCase()}`,
    access: anybody,
    takes: z.object({ params: recallParams, query: paperOfRecall }),
    gives: media(form.type),
    handle: async ({ params, query: { assumption, language, paper } }, { store }) => {
      const shown = await recallShown(store, params.id, assumption);
      if (!shown.ok) return shown;
      const name = `recall_${shown.value.recall.raisedAt.slice(0, 10)}_${params.id.slice(-8)}`;
      return ok(await paperResponse(form, recallDocument(shown.value, language, paper), name));
    },
  }),
);
