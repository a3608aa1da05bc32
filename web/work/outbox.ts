import type { IncomingPull } from '@clampwright/core/record';

/** A pull that was made but not yet acknowledged by the server. It keeps its identity, however often it is sent. */
export interface Unsent {
  readonly jobId: string;
  readonly pull: IncomingPull;
}

const KEY = 'clampwright.outbox';

/** What is needed of the browser's storage. */
export type Shelf = Pick<Storage, 'getItem' | 'setItem' | 'removeItem'>;

const isUnsent = (value: unknown): value is Unsent =>
  typeof value === 'object' &&
  value !== null &&
  'jobId' in value &&
  'pull' in value &&
  typeof value.pull === 'object' &&
  value.pull !== null &&
  'id' in value.pull &&
  'jointRef' in value.pull;

/** Everything that waits at this device, oldest first. */
export function unsentPulls(shelf: Shelf): readonly Unsent[] {
  const kept = readJson(shelf.getItem(KEY) ?? '[]');
  return Array.isArray(kept) ? kept.filter(isUnsent) : [];
}

function readJson(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    // Written by something else, or cut off by a full disk: no pull of ours can be in it.
    return undefined;
  }
}

/** Keeps a pull until it is acknowledged; the same pull once. */
export function keepUnsent(shelf: Shelf, unsent: Unsent): void {
  const others = unsentPulls(shelf).filter(({ pull }) => pull.id !== unsent.pull.id);
  shelf.setItem(KEY, JSON.stringify([...others, unsent]));
}

/** Forgets a pull: the server has it, or it was given up. */
export function forgetUnsent(shelf: Shelf, pullId: string): void {
  const others = unsentPulls(shelf).filter(({ pull }) => pull.id !== pullId);
  if (others.length === 0) shelf.removeItem(KEY);
  else shelf.setItem(KEY, JSON.stringify(others));
}
