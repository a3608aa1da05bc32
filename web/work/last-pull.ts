import type { Entry, JointState, Judgement, Pull } from '@clampwright/core/record';

/** The latest pull of a joint that still stands, as it was last judged. */
export interface LastPull {
  readonly pullId: string;
  /** Of the entry that judged it. */
  readonly seq: number;
  readonly position: number;
  readonly pull: Pull;
  readonly judgement: Judgement;
  readonly by: string;
}

/** Looks the last standing pull of a joint up in the entries of its job. */
export function lastPullOf(entries: readonly Entry[], joint: JointState): LastPull | undefined {
  const { lastPull } = joint;
  if (!lastPull) return undefined;
  const made = entries.findLast((entry) => entry.id === lastPull.pullId && entry.body.kind === 'pull');
  if (made?.body.kind !== 'pull') return undefined;
  const moved = entries.findLast((entry) => entry.body.kind === 'pull-moved' && entry.body.pullId === lastPull.pullId);
  const judged = moved?.body.kind === 'pull-moved' ? { seq: moved.seq, judgement: moved.body.judgement } : undefined;
  return {
    pullId: lastPull.pullId,
    seq: judged?.seq ?? made.seq,
    position: lastPull.cell.position,
    pull: made.body.pull,
    judgement: judged?.judgement ?? made.body.judgement,
    by: made.by.name,
  };
}
