const WINDOW_MS = 15 * 60_000;
const ALLOWED = 5;

/** Counts wrong PINs, so that twelve digits cannot be tried one after the other. Forgets at a restart. */
export interface Attempts {
  /** Counts one attempt before it is tried; tells the seconds to wait when there were too many. */
  readonly begin: (personId: string, nowMs: number) => number | undefined;
  /** The attempt was right: earlier wrong ones no longer count. */
  readonly succeed: (personId: string) => void;
}

/** At most five attempts a person in any quarter of an hour. */
export function attempts(): Attempts {
  const triedAt = new Map<string, readonly number[]>();
  return {
    begin: (personId, nowMs) => {
      const recent = (triedAt.get(personId) ?? []).filter((at) => at > nowMs - WINDOW_MS);
      const oldest = recent[0];
      if (recent.length >= ALLOWED && oldest !== undefined) return Math.ceil((oldest + WINDOW_MS - nowMs) / 1000);
      triedAt.set(personId, [...recent, nowMs]);
      return undefined;
    },
    succeed: (personId) => {
      triedAt.delete(personId);
    },
  };
}
