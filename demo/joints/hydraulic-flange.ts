import type { JointContent } from '@clampwright/core/joint';
import { torquePercent } from '../typed.ts';

const star = { method: 'star' } as const;

/** Gasketed flange of the tensioning hydraulics: three rounds in star order, one round the circle. */
export const hydraulicFlange: JointContent = {
  name: 'Hydraulic flange with gasket, 8 bolts M16',
  fastener: {
    thread: 'M16',
    propertyClass: '8.8',
    description: 'Hexagon bolt M16 × 70 with nut',
    lubricant: 'Anti-seize paste on thread and nut face',
    reuse: 'reusable',
  },
  layout: { kind: 'circle', count: 8, diameterMm: 180, firstAngleDeg: 22.5, direction: 'clockwise' },
  stages: [
    {
      kind: 'torque',
      torque: torquePercent(140, 8),
      rounds: [
        { share: 0.3, order: star },
        { share: 0.7, order: star },
        { share: 1, order: star },
        { share: 1, order: { method: 'circular' } },
      ],
    },
  ],
  numbersSource: { kind: 'maker', text: 'Tensioning unit, assembly sheet 4 (invented)' },
  cautions: [
    'Pressure is relieved and the line is proven empty before a bolt is touched.',
    'A new gasket each time; never tighten under pressure.',
  ],
  rework: { rule: 'loosen-and-repeat', underContinues: true, maximumAttempts: 3 },
  decisionRule: { kind: 'simple' },
  torqueUnit: 'N·m',
};
