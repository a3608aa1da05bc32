import type { Deps } from '../deps.ts';
import { countsOf, type Standing } from './standing.ts';

/** What is told is kept at this pace: a write for each line would cost more than taking it. */
const BEAT_MS = 5000;

/** By the identity of the device. */
export type Standings = Iterable<readonly [string, Standing]>;

/** Keeps what devices tell, now and then and at the end. */
export interface KeptCounts {
  readonly begin: () => void;
  /** @param last how the devices stood when they were ended */
  readonly end: (last: Standings) => Promise<void>;
}

/** @param standings of the devices at work */
export function keptCounts(deps: () => Pick<Deps, 'store' | 'logger'>, standings: () => Standings): KeptCounts {
  const kept = new Map<string, unknown>();
  let beat: NodeJS.Timeout | undefined;

  const keep = async (of: Standings): Promise<void> => {
    const { store, logger } = deps();
    const changed = [...of].filter(([id, { told }]) => kept.get(id) !== told());
    if (changed.length === 0) return;
    for (const [id, { told }] of changed) kept.set(id, told());
    const stored = await store.devices.keepCounts(new Map(changed.map(([id, { told }]) => [id, countsOf(told())])));
    if (stored.ok) return;
    kept.clear();
    logger.warn({ failure: stored.failure }, 'counts of devices not kept');
  };
  return {
    begin: () => {
      beat ??= setInterval(() => void keep(standings()), BEAT_MS).unref();
    },
    end: async (last) => {
      clearInterval(beat);
      beat = undefined;
      await keep(last);
    },
  };
}
