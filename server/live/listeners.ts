import type { LiveEvent } from '../api/contract.ts';

export type Listener<Event> = (event: Event) => void;

/** Who listens to what at this moment: to a job, unless other events are named. */
export interface Listeners<Event = LiveEvent> {
  readonly tell: (id: string, event: Event) => void;
  /** Undefined when as many listen as may; otherwise the way to stop. */
  readonly listen: (id: string, listener: Listener<Event>) => (() => void) | undefined;
  /** What is listened to. */
  readonly heard: () => readonly string[];
  readonly isHeard: (id: string) => boolean;
  /** Called when the first listener of all comes and when the last one goes. */
  readonly onPresence: (told: (someoneListens: boolean) => void) => void;
}

/** A tablet of each technician and a few more; beyond that something reconnects without end. */
const MOST_LISTENERS = 100;

export function listeners<Event = LiveEvent>(most: number = MOST_LISTENERS): Listeners<Event> {
  const byId = new Map<string, Set<Listener<Event>>>();
  let count = 0;
  let presence: ((someoneListens: boolean) => void) | undefined;

  const stop = (id: string, listener: Listener<Event>): void => {
    const there = byId.get(id);
    if (!there?.delete(listener)) return;
    if (there.size === 0) byId.delete(id);
    count -= 1;
    if (count === 0) presence?.(false);
  };

  return {
    tell: (id, event) => byId.get(id)?.forEach((listener) => listener(event)),
    listen: (id, listener) => {
      if (count >= most) return undefined;
      byId.set(id, (byId.get(id) ?? new Set()).add(listener));
      count += 1;
      if (count === 1) presence?.(true);
      return () => stop(id, listener);
    },
    heard: () => [...byId.keys()],
    isHeard: (id) => byId.has(id),
    onPresence: (told) => {
      presence = told;
    },
  };
}
