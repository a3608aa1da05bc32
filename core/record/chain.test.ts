import { createHash } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import { canonical } from './canonical.ts';
import { chain, hashOfEntry, links, startOfChain } from './chain.ts';
import type { EntryDraft } from './entry.ts';
import { technician, testId } from './testing/sample-job.ts';

const head = startOfChain(testId(1));
const note = (n: number, at: string): EntryDraft => ({
  id: testId(10 + n),
  at,
  by: technician,
  body: { kind: 'noted', text: `wind from the “north”, ${n}` },
});
const drafts = [note(1, '2026-03-02T06:00:01.000Z'), note(2, '2026-03-02T06:00:00.000Z')];

describe('the chain', () => {
  it('hands over the text in which an entry is stored, also where the clock ran back', () => {
    for (const { entry, text } of links(head, drafts)) expect(text).toBe(canonical(entry));
  });

  it('hashes all of an entry but its hash', () => {
    for (const { entry } of links(head, drafts)) expect(entry.hash).toBe(hashOfEntry(entry));
  });

  it('is the same with the digest of the platform', () => {
    const platform = (text: string) => createHash('sha256').update(text).digest('hex');
    expect(links(head, drafts, platform).map(({ entry }) => entry)).toEqual(chain(head, drafts));
  });

  it('never lets time run backwards, and keeps what the clock said', () => {
    const [first, second] = chain(head, drafts);
    expect(first).not.toHaveProperty('clockSaid');
    expect(second).toMatchObject({ at: first?.at, clockSaid: drafts[1]?.at, previousHash: first?.hash });
  });
});
