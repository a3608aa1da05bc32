import { done, openedSample, pullOf, taking } from '@clampwright/core/record/testing';
import { describe, expect, it } from 'vitest';
import { jobFrom, jobWith } from './job-in-hand.ts';

const opened = openedSample();
const worked = done(done(opened, taking), pullOf(1, 100));

describe('a job in hand', () => {
  it('goes on from what it knows to the same state as a fold of everything', () => {
    const further = jobWith(jobFrom(opened.entries), worked.entries.slice(1));
    expect(further?.state).toEqual(worked.state);
    expect(further?.entries).toEqual(worked.entries);
  });

  it('takes entries in whatever order they come, also those it knows', () => {
    const further = jobWith(jobFrom(opened.entries), worked.entries.toReversed());
    expect(further?.state).toEqual(worked.state);
  });

  it('stays the very same when nothing is new', () => {
    const job = jobFrom(worked.entries);
    expect(jobWith(job, worked.entries)).toBe(job);
  });

  it('does not go on over a gap', () => {
    expect(jobWith(jobFrom(opened.entries), worked.entries.slice(2))).toBeUndefined();
  });
});
