import type { JobState } from '@clampwright/core/record';
import { done, openedSample, pullOf, sampleJoint, sampleSheet, taking, turnOf } from '@clampwright/core/record/testing';
import { expect, it } from 'vitest';
import { jointToContinue } from './joint-to-continue.ts';

const begun = done(openedSample(), taking);

/** The sample joint twice, the second one worked on as told. */
const twoJoints = (second: typeof begun): JobState => ({
  ...begun.state,
  sheet: sampleSheet(sampleJoint),
  joints: [begun.state.joints[0]!, { ...second.state.joints[0]!, ref: 'J2' }],
});

it('goes to the first joint where nothing was pulled yet', () => {
  expect(jointToContinue(twoJoints(begun))).toBe('J1');
});

it('goes back to the joint that was pulled last', () => {
  expect(jointToContinue(twoJoints(done(begun, pullOf(1, 100))))).toBe('J2');
});

it('leaves a joint that is done', () => {
  const torqued = [1, 2, 3, 4].reduce((job, n) => done(job, pullOf(n, 100)), begun);
  const turned = [5, 6, 7, 8].reduce((job, n) => done(job, turnOf(n, 35)), torqued);
  expect(jointToContinue(twoJoints(turned))).toBe('J1');
  expect(jointToContinue(turned.state)).toBeUndefined();
});
