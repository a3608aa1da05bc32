import type { AngleWindow, TorqueWindow } from '../../procedure/procedure.ts';
import type { JointContent } from '../joint.ts';

export const torqueWindow = (lowerNm: number, upperNm: number): TorqueWindow => ({
  lowerNm,
  targetNm: (lowerNm + upperNm) / 2,
  upperNm,
  typed: { form: 'limits', lower: String(lowerNm), upper: String(upperNm), unit: 'N·m' },
});

export const angleWindow = (lowerDeg: number, upperDeg: number): AngleWindow => ({
  lowerDeg,
  targetDeg: (lowerDeg + upperDeg) / 2,
  upperDeg,
  typed: { form: 'limits', lower: String(lowerDeg), upper: String(upperDeg), unit: 'deg' },
});

/** A joint for tests that nothing speaks against: 8 bolts M16 8.8, 140 N·m in two rounds. */
export const aJoint = (more: Partial<JointContent> = {}): JointContent => ({
  name: 'Bench flange',
  fastener: { thread: 'M16', propertyClass: '8.8', description: 'Bolt', lubricant: 'Oil', reuse: 'reusable' },
  layout: { kind: 'circle', count: 8, diameterMm: 180, firstAngleDeg: 0, direction: 'clockwise' },
  stages: [
    {
      kind: 'torque',
      torque: torqueWindow(130, 150),
      rounds: [
        { share: 0.5, order: { method: 'star' } },
        { share: 1, order: { method: 'star' } },
      ],
    },
  ],
  numbersSource: { kind: 'maker', text: 'Bench manual, page 1' },
  cautions: [],
  rework: { rule: 'loosen-and-repeat', underContinues: true, maximumAttempts: 3 },
  decisionRule: { kind: 'simple' },
  torqueUnit: 'N·m',
  ...more,
});
