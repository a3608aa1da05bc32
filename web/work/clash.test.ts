import { decide } from '@clampwright/core/record';
import { contextFor, done, openedSample, pullOf, taking } from '@clampwright/core/record/testing';
import { expect, it } from 'vitest';
import { clashOf } from './clash.ts';

it('reads what stands on the position from the conflict that core tells', () => {
  const pulled = done(done(openedSample(), taking), pullOf(1, 100, { position: 2 }));
  const late = decide(
    pulled.state,
    pullOf(2, 101, { position: 2, stage: 1, round: 1, attempt: 1 }),
    contextFor(pulled),
  );
  if (late.ok || late.failure.kind !== 'conflict') throw new Error('a late pull is a conflict');
  expect(clashOf(late.failure.current)).toMatchObject({ attemptCount: 1, last: { verdict: 'within', torqueNm: 100 } });
});

it('is none where the conflict is about the job', () => {
  expect(clashOf({ status: 'closed' })).toBeUndefined();
  expect(clashOf(null)).toBeUndefined();
});
