import type { JointContent } from '@clampwright/core/joint';
import type { AngleWindow, TorqueWindow } from '@clampwright/core/procedure';
import type { Tool } from '@clampwright/core/wrench';

const torque = (lowerNm: number, targetNm: number, upperNm: number): TorqueWindow => ({
  lowerNm,
  targetNm,
  upperNm,
  typed: { form: 'limits', lower: String(lowerNm), upper: String(upperNm), unit: 'N·m' },
});

const angle = (lowerDeg: number, targetDeg: number, upperDeg: number): AngleWindow => ({
  lowerDeg,
  targetDeg,
  upperDeg,
  typed: { form: 'limits', lower: String(lowerDeg), upper: String(upperDeg), unit: 'deg' },
});

/** An invented six-bolt hub for tests and examples: 60 N·m, then on by 40 degrees. */
export const EXAMPLE_JOINT: JointContent = {
  name: 'Sheave hub',
  fastener: { thread: 'M12', propertyClass: '10.9', description: 'hexagon bolt', lubricant: 'oil', reuse: 'reusable' },
  layout: { kind: 'circle', count: 6, diameterMm: 180, firstAngleDeg: 0, direction: 'clockwise' },
  stages: [
    { kind: 'torque', torque: torque(57, 60, 63), rounds: [{ share: 1, order: { method: 'star' } }] },
    {
      kind: 'torque-and-angle',
      torque: torque(100, 120, 140),
      angle: angle(35, 40, 45),
      angleFromNm: 60,
      speedLimitDegPerS: 90,
      rounds: [{ share: 1, order: { method: 'star' } }],
    },
  ],
  numbersSource: { kind: 'derived', text: 'invented' },
  cautions: [],
  rework: { rule: 'loosen-and-repeat', underContinues: true, maximumAttempts: 3 },
  decisionRule: { kind: 'simple' },
  torqueUnit: 'N·m',
};

export const EXAMPLE_TOOL: Tool = {
  wrench: {
    id: '01973c3e-6a10-7000-8000-000000000001',
    name: 'Workshop 200',
    serial: 'KH-0417',
    type: 'I',
    class: 'C',
    lowestNm: 20,
    highestNm: 200,
    resolutionNm: 0.1,
    angleResolutionDeg: 0.1,
    leverMm: 500,
    connection: { kind: 'simulated', seed: 1 },
  },
};
