import type { JointContent } from '@clampwright/core/joint';
import { type JobSheet, type PersonRef, uuidV7 } from '@clampwright/core/record';
import type { Tool } from '@clampwright/core/wrench';

/** A number of its own for each thing of the ropeway, as an identity. */
export const id = (n: number): string =>
  uuidV7(
    1_772_600_000_000 + n,
    Uint8Array.from({ length: 10 }, (_, i) => (n * 37 + i * 11) % 256),
  );

export const technician: PersonRef = { id: id(9001), name: 'Ingrid Løvås', role: 'technician' };
export const lead: PersonRef = { id: id(9002), name: 'Matteo Zürcher-Łęcki', role: 'lead' };

/** 24 studs M24 of a tower flange: snug, torque in two rounds, angle. */
export const towerFlange: JointContent = {
  name: 'Tower flange, lower ring',
  fastener: {
    thread: 'M24',
    propertyClass: '10.9',
    description: 'preloaded bolt with two washers',
    lubricant: 'Molybdenum paste on thread and under the nut',
    reuse: 'new-each-time',
  },
  layout: { kind: 'circle', count: 24, diameterMm: 1640, firstAngleDeg: 0, direction: 'clockwise' },
  stages: [
    {
      kind: 'snug',
      torque: {
        lowerNm: 80,
        targetNm: 100,
        upperNm: 120,
        typed: { form: 'percent', target: '100', percent: '20', unit: 'N·m' },
      },
      rounds: [{ share: 1, order: { method: 'star' } }],
    },
    {
      kind: 'torque',
      torque: {
        lowerNm: 332.5,
        targetNm: 350,
        upperNm: 367.5,
        typed: { form: 'percent', target: '350', percent: '5', unit: 'N·m' },
      },
      rounds: [
        { share: 0.6, order: { method: 'star' } },
        { share: 1, order: { method: 'star' } },
      ],
    },
    {
      kind: 'angle',
      angle: {
        lowerDeg: 55,
        targetDeg: 60,
        upperDeg: 65,
        typed: { form: 'plus-minus', target: '60', plusMinus: '5', unit: 'deg' },
      },
      angleFromNm: 350,
      speedLimitDegPerS: 30,
      rounds: [{ share: 1, order: { method: 'circular' } }],
    },
  ],
  numbersSource: { kind: 'maker', text: 'Assembly instructions of the tower, sheet 14, revision C' },
  cautions: [
    'The ring stays in its sling until stage 2 is done on every position.',
    'Two people at the wrench above 300 N·m.',
  ],
  rework: { rule: 'loosen-and-repeat', underContinues: true, maximumAttempts: 3 },
  decisionRule: { kind: 'guarded', factor: 1 },
  torqueUnit: 'N·m',
  retorque: { after: 200, unit: 'h', note: 'First inspection of the season.' },
};

export const tool: Tool = {
  wrench: {
    id: id(8001),
    name: 'Long wrench 3',
    serial: 'KR-0317',
    type: 'I',
    class: 'C',
    lowestNm: 40,
    highestNm: 400,
    resolutionNm: 0.5,
    angleResolutionDeg: 0.5,
    leverMm: 650,
    connection: { kind: 'simulated', seed: 7 },
    calibration: {
      calibratedOn: '2025-10-02',
      dueOn: '2026-10-02',
      certificate: 'KV-25-118',
      by: 'own bench',
      maximumDeviationPercent: 1.4,
      expandedUncertaintyPercent: 1.2,
    },
  },
  adapter: { id: id(8101), name: 'Open end 36', lengthMm: 55, angleDeg: 0 },
};

export const overdueTool: Tool = {
  wrench: {
    ...tool.wrench,
    id: id(8002),
    name: 'Long wrench 1',
    serial: 'KR-0102',
    calibration: { ...tool.wrench.calibration!, calibratedOn: '2024-12-01', dueOn: '2025-12-01' },
  },
  extension: { id: id(8201), name: 'Bar 250', lengthMm: 250, stiffnessNmPerDeg: 310 },
};

/** A job on some joints of one tower. */
export function sheetOf(joints: readonly JointContent[], more: Partial<JobSheet>): JobSheet {
  return {
    id: id(7001),
    title: 'Tower 4 after the winter',
    asset: { id: id(7002), name: 'Kestrelhorn Ropeway, tower 4', location: 'Valley workshop, line section B' },
    joints: joints.map((content, index) => ({
      ref: `J${index + 1}`,
      label: joints.length === 1 ? 'lower ring' : `ring ${index + 1}`,
      joint: { id: id(7100 + index), revision: 3, status: 'released', content },
    })),
    demo: true,
    ...more,
  };
}
