import type { Rework } from '../joint/joint.ts';
import type { Attempt, CellState, Need } from './state.ts';

/** How many attempts a cell remembers; a large import keeps few, so that memory stays bounded. */
export interface FoldOptions {
  readonly attemptsKept?: number;
}

const isCarriedOn = (attempt: Attempt, rework: Rework): boolean => rework.underContinues && attempt.verdict === 'under';

/** Degrees already turned by the unbroken run of `under` attempts that stand at the end. */
function carriedDeg(attempts: readonly Attempt[], rework: Rework): number {
  let sum = 0;
  for (let i = attempts.length - 1; i >= 0; i--) {
    const attempt = attempts[i]!;
    if (attempt.standing !== 'stands') continue;
    if (!isCarriedOn(attempt, rework)) break;
    sum += attempt.angleDeg ?? 0;
  }
  return sum;
}

function needOf(cell: Omit<CellState, 'need'>, rework: Rework): Need {
  if (cell.acceptedBy) return 'nothing';
  if (cell.verdict === undefined) return 'pull';
  if (cell.verdict === 'within') return 'nothing';
  if (cell.attemptsCounted >= rework.maximumAttempts) return 'lead';
  if (cell.verdict === 'under' && rework.underContinues) return 'pull';
  switch (rework.rule) {
    case 'loosen-and-repeat':
      return 'loosen';
    case 'replace-fastener':
      return 'replace';
    case 'ask-lead':
      return 'lead';
  }
}

/** Puts on what follows from the attempts: verdict, carried angle, need. */
export function derived(cell: CellState, rework: Rework): CellState {
  const { attempts } = cell;
  const last = attempts.findLast(({ standing }) => standing === 'stands');
  const known = { ...cell, verdict: last?.verdict, carriedDeg: carriedDeg(attempts, rework) };
  return { ...known, need: needOf(known, rework) };
}

export function withAttempt(cell: CellState, attempt: Attempt, rework: Rework, options: FoldOptions): CellState {
  const { attemptsKept = Number.POSITIVE_INFINITY } = options;
  const surplus = Math.max(cell.attempts.length + 1 - attemptsKept, 0);
  const added = {
    ...cell,
    // as long as it must be: what a spread list keeps free for more would take a third of what a job remembers of a pull
    attempts: cell.attempts.slice(surplus).concat(attempt),
    attemptCount: cell.attemptCount + 1,
    attemptsCounted: cell.attemptsCounted + 1,
    acceptedBy: undefined,
  };
  return derived(added, rework);
}

/** A pull that was set aside or moved away stays in sight but no longer counts. */
export function withoutAttempt(cell: CellState, pullId: string, how: 'set-aside' | 'moved', rework: Rework): CellState {
  const attempts = cell.attempts.map((attempt) =>
    attempt.pullId === pullId && attempt.standing === 'stands' ? { ...attempt, standing: how } : attempt,
  );
  return derived({ ...cell, attempts, attemptsCounted: Math.max(0, cell.attemptsCounted - 1) }, rework);
}

/** Loosening or a new fastener undoes what was done on the position; a new fastener or the lead's order counts afresh. */
export function undone(cell: CellState, countsAfresh: boolean, rework: Rework): CellState {
  const attempts = cell.attempts.map(
    (attempt): Attempt => (attempt.standing === 'stands' ? { ...attempt, standing: 'undone' } : attempt),
  );
  const attemptsCounted = countsAfresh ? 0 : cell.attemptsCounted;
  return derived({ ...cell, attempts, attemptsCounted, acceptedBy: undefined }, rework);
}
