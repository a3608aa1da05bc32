import { type Entry, fold, foldOn, type JobState } from '@clampwright/core/record';

/** A job as this screen knows it: every entry, and the state that follows from them. */
export interface JobInHand {
  readonly entries: readonly Entry[];
  readonly state: JobState;
}

/** A job from all its entries, first to last. */
export const jobFrom = (entries: readonly Entry[]): JobInHand => ({ entries, state: fold(entries) });

/**
 * The job with further entries put on. Entries that are known already change nothing.
 *
 * @returns undefined where an entry is missing between: the job must be fetched anew
 */
export function jobWith(job: JobInHand, entries: readonly Entry[]): JobInHand | undefined {
  const fresh = entries.filter((entry) => entry.seq > job.state.lastSeq).toSorted((a, b) => a.seq - b.seq);
  if (fresh.length === 0) return job;
  const isGapless = fresh.every((entry, index) => entry.seq === job.state.lastSeq + 1 + index);
  if (!isGapless) return undefined;
  return {
    entries: [...job.entries, ...fresh],
    state: fresh.reduce((state, entry) => foldOn(state, entry), job.state),
  };
}
