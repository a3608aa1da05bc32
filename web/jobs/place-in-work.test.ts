import { done, openedSample, pullOf, taking, turnOf } from '@clampwright/core/record/testing';
import { describe, expect, it } from 'vitest';
import { cellsOfPosition, placeInWork, progressOfJob } from './place-in-work.ts';

const begun = done(openedSample(), taking);
const jointOf = (job: typeof begun) => job.state.joints[0]!;

describe('the place in the work', () => {
  it('begins with the first position of the first round and the whole order to come', () => {
    const place = placeInWork(jointOf(begun));
    expect(place.step).toMatchObject({ stage: 1, round: 1, kind: 'torque' });
    expect(place.coming).toEqual(place.step.order);
    expect(place).toMatchObject({ progress: { done: 0, total: 4 }, stages: 2, rounds: 1 });
  });

  it('takes a done position out of what is to come', () => {
    const place = placeInWork(jointOf(done(begun, pullOf(1, 100))));
    expect(place.coming).toEqual(place.step.order.slice(1));
    expect(place.progress).toEqual({ done: 1, total: 4 });
  });

  it('keeps a position that must be loosened at the head', () => {
    const place = placeInWork(jointOf(done(begun, pullOf(1, 120))));
    expect(place.coming[0]).toBe(place.step.order[0]);
  });

  it('stays at the last round when the joint is done', () => {
    const torqued = [1, 2, 3, 4].reduce((job, n) => done(job, pullOf(n, 100)), begun);
    const turned = [5, 6, 7, 8].reduce((job, n) => done(job, turnOf(n, 35)), torqued);
    const place = placeInWork(jointOf(turned));
    expect(place.step.stage).toBe(2);
    expect(place.coming).toEqual([]);
    expect(progressOfJob(turned.state)).toEqual({ done: 8, total: 8 });
  });

  it('knows every cell of a position', () => {
    expect(cellsOfPosition(jointOf(begun), 3).map(({ ref }) => [ref.stage, ref.position])).toEqual([
      [1, 3],
      [2, 3],
    ]);
  });
});
