import { useEffect, useState } from 'react';
import type { PlanWanted } from './plan-form.ts';
import type { PlanAnswer, PlanQuestion, Scatter } from './plan-messages.ts';
import { type PlayedPlan, sourceIn } from './play-plan.ts';
import { planWorker } from './use-order-search.ts';

/** Hands rest so long before it is drawn. */
const REST_MS = 400;

/** What a plan comes to once friction scatters, drawn beside the page; undefined until it is known. */
export function useScatter(wanted: PlanWanted | undefined, plan: PlayedPlan | undefined): Scatter | undefined {
  const request = wanted && plan && scatterRequest(wanted, plan);
  const key = request ? JSON.stringify(request) : '';
  const [known, setKnown] = useState<{ readonly key: string; readonly scatter: Scatter }>();
  useEffect(() => {
    if (key === '') return;
    const worker = planWorker();
    worker.addEventListener('message', ({ data }: MessageEvent<PlanAnswer>) => {
      if (data.kind === 'scattered') setKnown({ key, scatter: data.scatter });
    });
    const question: PlanQuestion = { kind: 'scatter', request: JSON.parse(key) };
    const timer = setTimeout(() => {
      // oxlint-disable-next-line unicorn/require-post-message-target-origin -- a worker has no origin to name
      worker.postMessage(question);
    }, REST_MS);
    return () => {
      clearTimeout(timer);
      worker.terminate();
    };
  }, [key]);
  return known?.key === key ? known.scatter : undefined;
}

function scatterRequest(wanted: PlanWanted, plan: PlayedPlan): unknown {
  const { frictionScatter, neighbours, finalN, rounds, wrenches, ceilingN, seatingN, targets } = wanted;
  if (frictionScatter === undefined || targets === 'shares') return undefined;
  return {
    ...sourceIn(neighbours),
    order: plan.rounds[0]?.order,
    finalN,
    rounds,
    atOnce: wrenches,
    ...(ceilingN === undefined ? {} : { ceilingN }),
    ...(seatingN === undefined ? {} : { seatingN }),
    frictionScatter,
  };
}
