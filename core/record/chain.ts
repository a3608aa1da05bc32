import { digestOf } from './digest.ts';
import type { Entry, EntryDraft } from './entry.ts';

/** What the chain must know of the entry before. */
export interface ChainHead {
  readonly jobId: string;
  readonly lastSeq: number;
  readonly lastHash: string;
  readonly lastAt: string;
}

/** Stands before the first entry of every job. */
export const NO_HASH = '0'.repeat(64);

export const startOfChain = (jobId: string): ChainHead => ({ jobId, lastSeq: 0, lastHash: NO_HASH, lastAt: '' });

export const headAfter = (entry: Entry): ChainHead => ({
  jobId: entry.jobId,
  lastSeq: entry.seq,
  lastHash: entry.hash,
  lastAt: entry.at,
});

/** SHA-256 over the canonical form of an entry without its own hash. */
export function hashOfEntry(entry: Entry): string {
  const { hash: _, ...sealed } = entry;
  return digestOf(sealed);
}

/**
 * Links drafts to the chain, in their order. Time never runs backwards in a chain: where the clock did,
 * `at` is held at the entry before and `clockSaid` keeps what the clock said.
 */
export function chain(head: ChainHead, drafts: readonly EntryDraft[]): readonly Entry[] {
  const entries: Entry[] = [];
  let at = head;
  for (const draft of drafts) {
    const entry = link(at, draft);
    entries.push(entry);
    at = headAfter(entry);
  }
  return entries;
}

function link(head: ChainHead, draft: EntryDraft): Entry {
  const clockRanBack = draft.at < head.lastAt;
  const unhashed = {
    jobId: head.jobId,
    seq: head.lastSeq + 1,
    id: draft.id,
    at: clockRanBack ? head.lastAt : draft.at,
    ...(clockRanBack ? { clockSaid: draft.at } : {}),
    by: draft.by,
    body: draft.body,
    previousHash: head.lastHash,
  };
  return { ...unhashed, hash: digestOf(unhashed) };
}
