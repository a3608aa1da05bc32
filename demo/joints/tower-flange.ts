import type { JointContent } from '@clampwright/core/joint';
import { anglePlusMinus, torqueLimits, torquePercent } from '../typed.ts';

const star = { method: 'star' } as const;

/** Preloaded ring flange of a tower: snug, torque, then angle. */
export const towerFlange: JointContent = {
  name: 'Tower flange, 24 bolts M24',
  fastener: {
    thread: 'M24',
    propertyClass: '10.9',
    description: 'Hexagon bolt M24 × 120 with nut and two hardened washers',
    lubricant: 'As delivered, nuts lubricated by the maker; add nothing',
    reuse: 'new-each-time',
  },
  layout: { kind: 'circle', count: 24, diameterMm: 1180, firstAngleDeg: 0, direction: 'clockwise' },
  stages: [
    { kind: 'snug', torque: torquePercent(120, 20), rounds: [{ share: 1, order: star }] },
    { kind: 'torque', torque: torquePercent(400, 5), rounds: [{ share: 1, order: star }] },
    {
      kind: 'angle',
      torque: torqueLimits(560, 950),
      angle: anglePlusMinus(30, 6),
      angleFromNm: 400,
      speedLimitDegPerS: 30,
      rounds: [{ share: 1, order: star }],
    },
  ],
  numbersSource: { kind: 'maker', text: 'Kestrelhorn tower manual (invented), sheet T-7, edition 3' },
  cautions: [
    'Structural work: only people licensed for it. The car is parked and the line is locked out.',
    'Mark nut, bolt and flange with one line before the angle stage.',
  ],
  rework: { rule: 'replace-fastener', underContinues: true, maximumAttempts: 3 },
  decisionRule: { kind: 'simple' },
  consequenceClass: 'CC3',
  torqueUnit: 'N·m',
};
