import type { OwnBolt, OwnMaterial } from '../../fastener/own-row.ts';
import type { AngleWindow, TorqueWindow } from '../../procedure/procedure.ts';
import type { Derivation } from '../derivation.ts';
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

/** A bolt of the workshop's own, between two shipped sizes. */
export const anOwnBolt: OwnBolt = {
  kind: 'bolt',
  id: '01991f3c-0000-7000-8000-000000000023',
  name: 'Tie rod 23',
  source: 'Drawing KH-114, measured on 4 rods',
  system: 'ISO metric',
  majorDiameterMm: 23,
  pitchMm: 2,
  bearingOuterMm: 34,
  holeMm: 25,
  by: { id: '01991f3c-0000-7000-8000-000000000002', name: 'Lead' },
  addedAt: '2026-03-02T06:00:00.000Z',
};

/** A material of the workshop's own, weaker than class 8.8. */
export const anOwnMaterial: OwnMaterial = {
  kind: 'material',
  id: '01991f3c-0000-7000-8000-000000000024',
  name: 'Stud of lot 7',
  source: 'Certificate 3.1, lot 7',
  yieldStrengthMPa: 250,
  tensileStrengthMPa: 420,
  by: { id: '01991f3c-0000-7000-8000-000000000002', name: 'Lead' },
  addedAt: '2026-03-02T06:00:00.000Z',
};

/** A derivation that filled in 100 ± 5 N·m, with one step and one own row. */
export const aDerivation: Derivation = {
  calculation: 'assembly-torque',
  input: {
    thread: 'M12',
    propertyClass: '10.9',
    threadFriction: 0.1,
    bearingFriction: 0.09,
    utilization: 0.9,
    tighteningFactor: 1.6,
  },
  output: { torqueNm: 100.4, preloadN: 54_720, leastPreloadN: 34_200, nutFactor: 0.153, utilizationAtUpper: 0.94 },
  filled: { lowerNm: 95, targetNm: 100, upperNm: 105 },
  steps: [
    {
      symbol: 'M_A',
      formula: 'F·r',
      withNumbers: '54720·0.001835',
      value: 100.4112,
      unit: 'N·m',
      source: 'a source',
    },
  ],
  sources: ['a source'],
  ownRows: [
    {
      id: '01991f3c-0000-7000-8000-000000000001',
      kind: 'lubricant',
      name: 'Assembly paste',
      source: 'own test',
      threadFriction: { lower: 0.1, upper: 0.12 },
      bearingFriction: { lower: 0.09, upper: 0.12 },
      by: { id: '01991f3c-0000-7000-8000-000000000002', name: 'Lead' },
      addedAt: '2026-03-02T06:00:00.000Z',
    },
  ],
};
