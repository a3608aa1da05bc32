import type { JointContent } from '@clampwright/core/joint';
import { anglePlusMinus, torqueLimits, torquePercent } from '../typed.ts';

/** Hub of a line sheave: torque and angle are judged together. */
export const sheaveHub: JointContent = {
  name: 'Sheave hub, 6 bolts M12',
  fastener: {
    thread: 'M12',
    propertyClass: '10.9',
    description: 'Hexagon socket head cap screw M12 × 60',
    lubricant: 'Thread and head with the workshop’s assembly paste',
    reuse: 'reusable',
  },
  layout: { kind: 'circle', count: 6, diameterMm: 140, firstAngleDeg: 0, direction: 'clockwise' },
  stages: [
    { kind: 'snug', torque: torquePercent(30, 15), rounds: [{ share: 1, order: { method: 'star' } }] },
    {
      kind: 'torque-and-angle',
      torque: torqueLimits(70, 115),
      angle: anglePlusMinus(30, 6),
      angleFromNm: 30,
      speedLimitDegPerS: 30,
      rounds: [{ share: 1, order: { method: 'star' } }],
    },
  ],
  numbersSource: { kind: 'maker', text: 'Kestrelhorn sheave manual (invented), page 12' },
  cautions: ['The rope is lifted off and secured before a hub is opened.'],
  rework: { rule: 'loosen-and-repeat', underContinues: true, maximumAttempts: 3 },
  decisionRule: { kind: 'simple' },
  torqueUnit: 'N·m',
};
