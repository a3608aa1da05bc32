import { describe, expect, it } from 'vitest';
import type { Stage } from '../procedure/procedure.ts';
import { checkJoint } from './check.ts';
import { aJoint, angleWindow, anOwnBolt, anOwnMaterial, torqueWindow } from './testing/a-joint.ts';
import { warnJoint } from './warn.ts';

const stage = (lower: number, upper: number, more: Partial<Stage> = {}): Stage => ({
  kind: 'torque',
  torque: torqueWindow(lower, upper),
  rounds: [{ share: 1, order: { method: 'star' } }],
  ...more,
});
const angle: Stage = { kind: 'angle', angle: angleWindow(85, 95), rounds: [{ share: 1, order: { method: 'star' } }] };

const told = (stages: readonly Stage[], lubricant = 'Oil') =>
  warnJoint(aJoint({ stages: [...stages], fastener: { ...aJoint().fastener, lubricant } }));

describe('warnJoint', () => {
  it('says nothing of a usual torque', () => {
    expect(told([stage(130, 150)])).toEqual([]);
  });

  it('names stage, finding and likely slip, and leaves the joint to be released', () => {
    const stages = [stage(250, 280)];
    expect(told(stages)).toMatchObject([
      {
        field: 'stages[0].torque',
        assessment: 'high',
        message: expect.stringContaining('yield'),
        plausibility: { utilization: { usual: expect.closeTo(1.16, 2) } },
      },
    ]);
    expect(checkJoint(aJoint({ stages }))).toEqual([]);
  });

  it('judges by the strength of an own material instead of a class, and names it', () => {
    const { propertyClass: _, ...fastener } = aJoint().fastener;
    const joint = aJoint({ stages: [stage(130, 150)], fastener: { ...fastener, ownMaterial: anOwnMaterial } });
    expect(warnJoint(joint)).toMatchObject([
      { assessment: 'beyond-yield', plausibility: { propertyClass: 'Stud of lot 7' } },
    ]);
    const broken = aJoint({ stages: [stage(380, 400)], fastener: joint.fastener });
    expect(checkJoint(broken)).toMatchObject([
      { field: 'stages[0].torque.upperNm', message: expect.stringContaining('breaks M16 Stud of lot 7') },
    ]);
    const stronger = { ...anOwnMaterial, yieldStrengthMPa: 900, tensileStrengthMPa: 1000 };
    expect(checkJoint({ ...broken, fastener: { ...fastener, ownMaterial: stronger } })).toEqual([]);
  });

  it('judges by the dimensions of an own bolt', () => {
    const fastener = { ...aJoint().fastener, thread: anOwnBolt.name, ownBolt: anOwnBolt };
    expect(warnJoint(aJoint({ stages: [stage(1000, 1100)], fastener }))).toMatchObject([
      { assessment: 'beyond-yield', message: expect.stringContaining('Tie rod 23 8.8') },
    ]);
    expect(warnJoint(aJoint({ stages: [stage(420, 460)], fastener }))).toEqual([]);
  });

  it('knows a dry figure on a lubricated bolt from one on a dry bolt', () => {
    expect(told([stage(235, 265)])[0]?.plausibility.slips[0]).toMatchObject({ kind: 'dry-figure' });
    expect(told([stage(235, 265)], 'dry')).toEqual([]);
  });

  it('finds kgf·m typed as N·m', () => {
    expect(told([stage(18, 22)])).toMatchObject([{ assessment: 'low', message: expect.stringContaining('kgf·m') }]);
  });

  it.each<[string, readonly Stage[]]>([
    ['a snug torque', [stage(10, 14, { kind: 'snug' }), stage(130, 150)]],
    ['a first step', [stage(10, 14), stage(130, 150)]],
    ['a torque before an angle', [stage(18, 22), angle]],
    [
      'a torque watched while an angle is turned',
      [stage(18, 22, { kind: 'torque-and-angle', angle: angleWindow(50, 70) })],
    ],
    ['a check', [stage(130, 150), stage(18, 22, { kind: 'check' })]],
  ])('takes %s for low on purpose', (_, stages) => {
    expect(told(stages)).toEqual([]);
  });

  it('leaves a torque that breaks the bolt to the check, which refuses it, and tells it as well', () => {
    const broken = aJoint({ stages: [stage(1000, 1200)] });
    expect(warnJoint(broken)).toMatchObject([{ assessment: 'beyond-ultimate' }]);
    expect(checkJoint(broken)).toMatchObject([{ field: 'stages[0].torque.upperNm' }]);
  });

  it('is silent on a fastener that the check does not know', () => {
    expect(warnJoint(aJoint({ fastener: { ...aJoint().fastener, thread: 'M15x7' } }))).toEqual([]);
  });
});
