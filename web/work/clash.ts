import type { Attempt } from '@clampwright/core/record';

/** What stands on the position by now, as a conflict tells it. */
export interface Clash {
  readonly attemptCount: number;
  readonly last: Attempt | undefined;
}

const isAttempt = (value: unknown): value is Attempt =>
  typeof value === 'object' && value !== null && 'pullId' in value && 'verdict' in value && 'torqueNm' in value;

/** Reads the `current` of a conflict; undefined where the conflict is about something else. */
export function clashOf(current: unknown): Clash | undefined {
  if (typeof current !== 'object' || current === null || !('attemptCount' in current)) return undefined;
  const { attemptCount } = current;
  if (typeof attemptCount !== 'number') return undefined;
  const last = 'last' in current && isAttempt(current.last) ? current.last : undefined;
  return { attemptCount, last };
}
