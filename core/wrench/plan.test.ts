import { describe, expect, it } from 'vitest';
import { calibrationPlan } from './plan.ts';
import { aWrench } from './testing/a-wrench.ts';

const planned = (more: Parameters<typeof aWrench>[0]) => {
  const plan = calibrationPlan(aWrench(more));
  if (!plan.ok) throw new Error(JSON.stringify(plan.failure));
  return plan.value;
};

describe('the plan of a calibration', () => {
  it('loads an indicating wrench once, zeroes it, and rises from its lowest mark', () => {
    expect(planned({ lowestNm: 20, highestNm: 200 }).steps).toEqual([
      { kind: 'preload', direction: 'clockwise', torqueNm: 200, times: 1 },
      { kind: 'zero', direction: 'clockwise' },
      ...[20, 40, 120, 200].map((torqueNm) => ({ kind: 'point', direction: 'clockwise', torqueNm, repeats: 5 })),
    ]);
  });

  it('loads a setting wrench five times in each direction, and tells how fast to approach', () => {
    const { steps, finalApproachS, preloadings } = planned({
      type: 'II',
      class: 'A',
      lowestNm: 40,
      directions: ['clockwise', 'anticlockwise'],
    });
    expect(preloadings).toBe(5);
    expect(finalApproachS).toEqual([0.5, 4]);
    expect(steps.map(({ kind, direction }) => `${kind} ${direction}`)).toEqual([
      'preload clockwise',
      ...Array.from({ length: 3 }, () => 'point clockwise'),
      'preload anticlockwise',
      ...Array.from({ length: 3 }, () => 'point anticlockwise'),
    ]);
  });

  it('has one point for a wrench that is set for good', () => {
    expect(planned({ type: 'II', class: 'B', highestNm: 80 }).targetsNm).toEqual([80]);
  });

  it('begins where the wrench begins', () => {
    expect(planned({ lowestNm: 60, highestNm: 200 }).targetsNm).toEqual([60, 120, 200]);
  });

  it('is refused for a class that the type has not', () => {
    expect(calibrationPlan(aWrench({ type: 'I', class: 'F' }))).toMatchObject({ failure: { field: 'class' } });
  });
});
