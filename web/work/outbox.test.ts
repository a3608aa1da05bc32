import { pullOf } from '@clampwright/core/record/testing';
import { describe, expect, it } from 'vitest';
import { forgetUnsent, keepUnsent, type Shelf, unsentPulls } from './outbox.ts';

/** A browser's storage in memory. */
function emptyShelf(): Shelf {
  const things = new Map<string, string>();
  return {
    getItem: (key) => things.get(key) ?? null,
    setItem: (key, value) => void things.set(key, value),
    removeItem: (key) => void things.delete(key),
  };
}

const first = { jobId: 'job', pull: pullOf(1, 100) };
const second = { jobId: 'job', pull: pullOf(2, 101) };

describe('the outbox', () => {
  it('keeps pulls in the order in which they were made', () => {
    const shelf = emptyShelf();
    keepUnsent(shelf, first);
    keepUnsent(shelf, second);
    expect(unsentPulls(shelf)).toEqual([first, second]);
  });

  it('keeps the same pull once, as it was last sent', () => {
    const shelf = emptyShelf();
    keepUnsent(shelf, first);
    keepUnsent(shelf, { ...first, pull: { ...first.pull, attempt: 2 } });
    expect(unsentPulls(shelf).map(({ pull }) => pull.attempt)).toEqual([2]);
  });

  it('forgets an acknowledged pull and no other', () => {
    const shelf = emptyShelf();
    keepUnsent(shelf, first);
    keepUnsent(shelf, second);
    forgetUnsent(shelf, first.pull.id);
    expect(unsentPulls(shelf)).toEqual([second]);
    forgetUnsent(shelf, second.pull.id);
    expect(unsentPulls(shelf)).toEqual([]);
  });

  it('is empty where storage holds something else', () => {
    const shelf = emptyShelf();
    shelf.setItem('clampwright.outbox', '{"not":"a list"');
    expect(unsentPulls(shelf)).toEqual([]);
  });
});
