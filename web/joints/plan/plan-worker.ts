import { parse } from '@clampwright/core/failure';
import {
  orderSearchRequestSchema,
  roundTargets,
  roundTargetsRequestSchema,
  type SearchProgress,
  searching,
} from '@clampwright/core/layout';
import type { PlanAnswer, PlanQuestion } from './plan-messages.ts';

const TELL_EVERY_MS = 100;

const tell = (answer: PlanAnswer): void => {
  // oxlint-disable-next-line unicorn/require-post-message-target-origin -- a worker answers its page alone
  self.postMessage(answer);
};

/* Runs beside the page: a search of many orders and the drawing of friction hold up no finger. */
self.addEventListener('message', ({ data }: MessageEvent<PlanQuestion>) => {
  if (data.kind === 'search') search(data.request);
  else scatter(data.request);
});

function search(request: unknown): void {
  const read = parse(orderSearchRequestSchema, request);
  const begun = read.ok ? searching(read.value) : read;
  if (!begun.ok) return tell({ kind: 'refused', failure: begun.failure });
  let toldAt = 0;
  let step: IteratorResult<SearchProgress, { readonly order: readonly number[]; readonly rounds: number }>;
  for (step = begun.value.next(); !step.done; step = begun.value.next()) {
    if (Date.now() - toldAt < TELL_EVERY_MS) continue;
    toldAt = Date.now();
    tell({ kind: 'progress', progress: step.value });
  }
  tell({ kind: 'found', order: step.value.order, rounds: step.value.rounds });
}

function scatter(request: unknown): void {
  const read = parse(roundTargetsRequestSchema, request);
  const planned = read.ok ? roundTargets(read.value) : read;
  if (planned.ok) tell({ kind: 'scattered', scatter: planned.value.scatter ?? [] });
  else tell({ kind: 'refused', failure: planned.failure });
}
