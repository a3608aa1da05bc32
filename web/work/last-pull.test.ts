import { contextFor, done, openedSample, pullOf, taking, testId } from '@clampwright/core/record/testing';
import { expect, it } from 'vitest';
import { lastPullOf } from './last-pull.ts';

const begun = done(openedSample(), taking);
const last = (job: typeof begun) => lastPullOf(job.entries, job.state.joints[0]!);

it('is none before the first pull', () => {
  expect(last(begun)).toBeUndefined();
});

it('is the latest pull with its judgement', () => {
  const pulled = done(done(begun, pullOf(1, 100)), pullOf(2, 120));
  expect(last(pulled)).toMatchObject({ pullId: testId(2), seq: 4, judgement: { verdict: 'over' } });
});

it('is judged anew where it was moved to', () => {
  const pulled = done(begun, pullOf(1, 100));
  const body = pulled.entries.at(-1)!.body;
  if (body.kind !== 'pull') throw new Error('a pull was recorded');
  const to = { ...body.pull.cell, position: 4 };
  const move = { kind: 'move-pull', pullId: testId(1), to, reason: 'other position' } as const;
  const moved = done(pulled, move, contextFor(pulled, { pulled: body.pull }));
  expect(last(moved)).toMatchObject({ pullId: testId(1), seq: moved.state.lastSeq, position: 4 });
});

it('is none once it was set aside', () => {
  const pulled = done(begun, pullOf(1, 100));
  const aside = done(pulled, { kind: 'set-pull-aside', pullId: testId(1), reason: 'slipped off' });
  expect(last(aside)).toBeUndefined();
});
