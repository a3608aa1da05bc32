import type { JointContent } from '@clampwright/core/joint';
import { torquePercent } from '../typed.ts';

const fromTheMiddle = { method: 'from-the-middle' } as const;

/** Cover of the drive's gearbox: fasteners along the edge, two rounds. */
export const gearboxCover: JointContent = {
  name: 'Gearbox cover, 14 screws M10',
  fastener: {
    thread: 'M10',
    propertyClass: '8.8',
    description: 'Hexagon head screw M10 × 35 with washer',
    lubricant: 'Light oil',
    reuse: 'reusable',
  },
  layout: { kind: 'rectangle', rows: 4, columns: 5, pitchXMm: 120, pitchYMm: 110, edgeOnly: true },
  stages: [
    {
      kind: 'torque',
      torque: torquePercent(46, 6),
      rounds: [
        { share: 0.5, order: fromTheMiddle },
        { share: 1, order: fromTheMiddle },
      ],
    },
  ],
  numbersSource: {
    kind: 'standard',
    text: 'Workshop table for class 8.8, lightly oiled (invented for the demonstration)',
  },
  cautions: ['The drive is switched off, locked and tagged; the brake is closed.'],
  rework: { rule: 'loosen-and-repeat', underContinues: true, maximumAttempts: 3 },
  decisionRule: { kind: 'simple' },
  torqueUnit: 'N·m',
};
