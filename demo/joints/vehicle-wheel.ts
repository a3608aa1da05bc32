import type { JointContent } from '@clampwright/core/joint';
import { torquePercent } from '../typed.ts';

/** Wheel of the service vehicle: two rounds in star order, again after some distance. */
export const vehicleWheel: JointContent = {
  name: 'Service vehicle wheel, 5 studs M14',
  fastener: {
    thread: 'M14x1.5',
    propertyClass: '10.9',
    description: 'Wheel nut on stud M14 × 1.5, conical seat',
    lubricant: 'Clean and dry; no oil on the seat',
    reuse: 'reusable',
  },
  layout: { kind: 'circle', count: 5, diameterMm: 130, firstAngleDeg: 0, direction: 'clockwise' },
  stages: [
    {
      kind: 'torque',
      torque: torquePercent(160, 6),
      rounds: [
        { share: 0.5, order: { method: 'star' } },
        { share: 1, order: { method: 'star' } },
      ],
    },
  ],
  numbersSource: { kind: 'maker', text: 'Vehicle handbook (invented), wheels and tyres' },
  cautions: ['The last round with the wheel on the ground.'],
  rework: { rule: 'loosen-and-repeat', underContinues: true, maximumAttempts: 3 },
  decisionRule: { kind: 'simple' },
  consequenceClass: 'CC2',
  torqueUnit: 'N·m',
  retorque: { after: 50, unit: 'km', note: 'Wheel nuts settle; tighten again after 50 km.' },
};
