import type { Failure } from '@clampwright/core/failure';
import { countPlaces, type SearchProgress } from '@clampwright/core/layout';
import { useEffect, useRef, useState } from 'react';
import type { PlanWanted } from './plan-form.ts';
import type { PlanAnswer, PlanQuestion } from './plan-messages.ts';
import { sourceIn } from './play-plan.ts';

/** A worker of its own, for one question. */
export const planWorker = (): Worker =>
  new Worker(new URL('./plan-worker.ts', import.meta.url), { type: 'module', name: 'plan' });

export interface OrderSearch {
  readonly progress: SearchProgress | undefined;
  readonly isRunning: boolean;
  readonly failure: Failure | undefined;
  readonly begin: (wanted: PlanWanted) => void;
  /** Ends the search; the best order so far is taken. */
  readonly stop: () => void;
}

/** Searches an order beside the page. */
export function useOrderSearch(onFound: (order: readonly number[], rounds: number) => void): OrderSearch {
  const worker = useRef<Worker>(undefined);
  const [progress, setProgress] = useState<SearchProgress>();
  const [isRunning, setRunning] = useState(false);
  const [failure, setFailure] = useState<Failure>();
  const end = () => {
    worker.current?.terminate();
    worker.current = undefined;
    setRunning(false);
    setProgress(undefined);
  };
  useEffect(() => () => worker.current?.terminate(), []);
  const hear = (answer: PlanAnswer) => {
    if (answer.kind === 'progress') return setProgress(answer.progress);
    end();
    if (answer.kind === 'found') onFound(answer.order, answer.rounds);
    if (answer.kind === 'refused') setFailure(answer.failure);
  };
  const begin = (wanted: PlanWanted) => {
    end();
    setFailure(undefined);
    setRunning(true);
    worker.current = planWorker();
    worker.current.addEventListener('message', ({ data }: MessageEvent<PlanAnswer>) => hear(data));
    const question: PlanQuestion = { kind: 'search', request: searchRequest(wanted) };
    // oxlint-disable-next-line unicorn/require-post-message-target-origin -- a worker has no origin to name
    worker.current.postMessage(question);
  };
  const stop = () => {
    const best = progress;
    end();
    if (best) onFound(best.order, best.rounds);
  };
  return { progress, isRunning, failure, begin, stop };
}

function searchRequest({ neighbours, finalN, shares, layout, rounds }: PlanWanted): unknown {
  const count = countPlaces(layout);
  return {
    ...sourceIn(neighbours),
    targetN: finalN,
    mostPulls: rounds * count,
    firstShare: rounds === 1 ? 1 : (shares[0] ?? 1),
  };
}
