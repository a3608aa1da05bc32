import type { JointContent } from '@clampwright/core/joint';
import { torquePercent } from '../typed.ts';

const order = [1, 5, 3, 7, 2, 6, 4, 8];
const rounds = [
  { share: 0.7307, shares: [1.1836, 0.6258, 1.1464, 0.7275, 1.1712, 0.6215, 1.135, 0.7307] },
  { share: 1, shares: [1.1633, 0.9797, 1.1831, 0.9995, 1.1637, 0.9801, 1.1836, 1] },
];
const closing = { share: 1, order: { method: 'circular' as const }, closing: { stillDeg: 3 } };

/** Gasketed flange of the return line: two rounds planned with the neighbours, then round until nothing moves. */
export const returnLineFlange: JointContent = {
  name: 'Return line flange, planned, 8 bolts M16',
  fastener: {
    thread: 'M16',
    propertyClass: '8.8',
    description: 'Hexagon bolt M16 × 80 with nut',
    lubricant: 'Anti-seize paste on thread and nut face',
    reuse: 'reusable',
  },
  layout: { kind: 'circle', count: 8, diameterMm: 240, firstAngleDeg: 22.5, direction: 'clockwise' },
  stages: [
    {
      kind: 'torque',
      torque: torquePercent(110, 8),
      rounds: [
        ...rounds.map(({ share, shares }) => ({
          share,
          order: { method: 'own' as const, positions: order },
          positionShares: shares,
        })),
        closing,
        closing,
      ],
    },
  ],
  numbersSource: { kind: 'trial', text: 'Bolt-up trial of the workshop, sheet 9 (invented)' },
  neighbours: {
    how: 'dimensions',
    note: 'Drawing of the return line, gasket data sheet (both invented)',
    model: {
      kind: 'ring',
      count: 8,
      boltCircleMm: 240,
      outerMm: 285,
      innerMm: 165,
      heightMm: 20,
      gasketOuterMm: 210,
      gasketInnerMm: 170,
      gasketThicknessMm: 2,
      gasketMPa: 400,
      gasketUnloadingMPa: 1500,
      modulusMPa: 200_000,
      poisson: 0.3,
      hubN: 0,
      boltNPerMm: 600_000,
    },
    plan: {
      stage: 1,
      finalN: 40_000,
      rounds: rounds.map(({ shares }) => ({ order, shares })),
      wrenches: 1,
      planned: { spread: 0.000076, pulls: 16, minutes: 5.444, momentNm: 5681, gapMm: 0.0793 },
      compared: { spread: 0.2601, pulls: 24, minutes: 8.167, momentNm: 2105, gapMm: 0.0294 },
    },
  },
  cautions: [
    'Pressure is relieved and the line is proven empty before a bolt is touched.',
    'A new gasket each time; never tighten under pressure.',
  ],
  rework: { rule: 'loosen-and-repeat', underContinues: true, maximumAttempts: 3 },
  decisionRule: { kind: 'simple' },
  torqueUnit: 'N·m',
};
