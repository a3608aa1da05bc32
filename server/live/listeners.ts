import type { LiveEvent } from '../api/contract.ts';

export type Listener = (event: LiveEvent) => void;

/** Who listens to which job at this moment. */
export interface Listeners {
  readonly tell: (jobId: string, event: LiveEvent) => void;
  /** Undefined when as many listen as may; otherwise the way to stop. */
  readonly listen: (jobId: string, listener: Listener) => (() => void) | undefined;
  readonly jobs: () => readonly string[];
  /** Called when the first listener of all comes and when the last one goes. */
  readonly onPresence: (told: (someoneListens: boolean) => void) => void;
}

/** A tablet of each technician and a few more; beyond that something reconnects without end. */
const MOST_LISTENERS = 100;

export function listeners(most: number = MOST_LISTENERS): Listeners {
  const byJob = new Map<string, Set<Listener>>();
  let count = 0;
  let presence: ((someoneListens: boolean) => void) | undefined;

  const stop = (jobId: string, listener: Listener): void => {
    const ofJob = byJob.get(jobId);
    if (!ofJob?.delete(listener)) return;
    if (ofJob.size === 0) byJob.delete(jobId);
    count -= 1;
    if (count === 0) presence?.(false);
  };

  return {
    tell: (jobId, event) => byJob.get(jobId)?.forEach((listener) => listener(event)),
    listen: (jobId, listener) => {
      if (count >= most) return undefined;
      byJob.set(jobId, (byJob.get(jobId) ?? new Set()).add(listener));
      count += 1;
      if (count === 1) presence?.(true);
      return () => stop(jobId, listener);
    },
    jobs: () => [...byJob.keys()],
    onPresence: (told) => {
      presence = told;
    },
  };
}
