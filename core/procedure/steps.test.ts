import { describe, expect, it } from 'vitest';
import type { Layout } from '../layout/layout.ts';
import type { Round, Stage } from './procedure.ts';
import { stepAt } from './step.ts';
import { stepsOf } from './steps.ts';

const layout: Layout = { kind: 'circle', count: 4, diameterMm: 120, firstAngleDeg: 0, direction: 'clockwise' };
const torque = {
  lowerNm: 95,
  targetNm: 100,
  upperNm: 105,
  typed: { form: 'percent', target: '100', percent: '5', unit: 'N·m' },
} as const;
const angle = {
  lowerDeg: 85,
  targetDeg: 90,
  upperDeg: 95,
  typed: { form: 'plus-minus', target: '90', plusMinus: '5', unit: 'deg' },
} as const;
const star = (share: number): Round => ({ share, order: { method: 'star' } });
const twoStages: Stage[] = [
  { kind: 'torque', torque, rounds: [star(0.5), { share: 1, order: { method: 'circular' } }] },
  { kind: 'angle', angle, torque, angleFromNm: 20, speedLimitDegPerS: 60, rounds: [star(1)] },
];

const worked = (stages: Stage[]) => {
  const steps = stepsOf({ layout, stages });
  if (!steps.ok) throw new Error(JSON.stringify(steps.failure));
  return steps.value;
};

describe('steps of a joint', () => {
  it('come stage by stage, round by round, counted from 1, each with its order', () => {
    expect(worked(twoStages).map(({ stage, round, kind, order }) => [stage, round, kind, order])).toEqual([
      [1, 1, 'torque', [1, 3, 2, 4]],
      [1, 2, 'torque', [1, 2, 3, 4]],
      [2, 1, 'angle', [1, 3, 2, 4]],
    ]);
  });

  it('scale torque by the share of the round', () => {
    const [half, whole] = worked(twoStages);
    expect(half!.torque).toEqual({ lowerNm: 47.5, targetNm: 50, upperNm: 52.5 });
    expect(whole!.torque).toEqual({ lowerNm: 95, targetNm: 100, upperNm: 105 });
  });

  it('give each position the window of its own share, where a plan set them', () => {
    const [step] = worked([{ kind: 'torque', torque, rounds: [{ ...star(1), positionShares: [1.2, 1, 0.9, 1] }] }]);
    expect(stepAt(step!, 1).torque?.targetNm).toBeCloseTo(120, 12);
    expect(stepAt(step!, 3).torque?.lowerNm).toBeCloseTo(85.5, 12);
    expect(step!.torque?.targetNm).toBe(100);
  });

  it('are the same for every position where nothing was planned', () => {
    const [half] = worked(twoStages);
    expect([1, 2, 3, 4].map((position) => stepAt(half!, position))).toEqual([half, half, half, half]);
  });

  it('leave the angle, its threshold and the speed limit as they are', () => {
    const [step] = worked([{ ...twoStages[1]!, rounds: [star(0.5)] }]);
    expect(step).toMatchObject({
      angle: { lowerDeg: 85, targetDeg: 90, upperDeg: 95 },
      angleFromNm: 20,
      speedLimitDegPerS: 60,
    });
  });

  it('are refused with the field of an own order that repeats', () => {
    const own: Round = { share: 1, order: { method: 'own', positions: [1, 2, 2, 4] } };
    const steps = stepsOf({ layout, stages: [twoStages[0]!, { kind: 'check', torque, rounds: [star(1), own] }] });
    expect(steps).toMatchObject({ ok: false, failure: { field: 'stages[1].rounds[1].order.positions[2]' } });
  });
});
