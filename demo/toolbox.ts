import type { Adapter, Extension, Wrench } from '@clampwright/core/wrench';
import { demoId } from './identity.ts';

const dayMs = 86_400_000;
const dateFrom = (now: Date, days: number): string => new Date(now.getTime() + days * dayMs).toISOString().slice(0, 10);

interface CalibrationFigures {
  readonly daysAgo: number;
  readonly maximumDeviationPercent: number;
  readonly expandedUncertaintyPercent: number;
}

function calibrated(now: Date, certificate: string, figures: CalibrationFigures): NonNullable<Wrench['calibration']> {
  return {
    calibratedOn: dateFrom(now, -figures.daysAgo),
    dueOn: dateFrom(now, 365 - figures.daysAgo),
    certificate,
    by: 'Kestrelhorn calibration bench (invented)',
    maximumDeviationPercent: figures.maximumDeviationPercent,
    expandedUncertaintyPercent: figures.expandedUncertaintyPercent,
  };
}

/** Wrenches of the invented workshop; one of them is overdue, one soon will be. */
export function demoWrenches(now: Date): readonly Wrench[] {
  return [
    {
      id: demoId('wrench small'),
      name: 'Small wrench',
      serial: 'KH-101',
      type: 'I',
      class: 'C',
      lowestNm: 5,
      highestNm: 60,
      resolutionNm: 0.05,
      angleResolutionDeg: 0.5,
      leverMm: 280,
      connection: { kind: 'simulated', seed: 101 },
      calibration: calibrated(now, 'KH-C-0412', {
        daysAgo: 80,
        maximumDeviationPercent: 0.9,
        expandedUncertaintyPercent: 0.8,
      }),
    },
    {
      id: demoId('wrench middle'),
      name: 'Middle wrench',
      serial: 'KH-102',
      type: 'I',
      class: 'C',
      lowestNm: 20,
      highestNm: 200,
      resolutionNm: 0.1,
      angleResolutionDeg: 0.5,
      leverMm: 480,
      connection: { kind: 'simulated', seed: 102 },
      calibration: calibrated(now, 'KH-C-0398', {
        daysAgo: 345,
        maximumDeviationPercent: 1.1,
        expandedUncertaintyPercent: 0.9,
      }),
    },
    {
      id: demoId('wrench large'),
      name: 'Large wrench',
      serial: 'KH-103',
      type: 'I',
      class: 'C',
      lowestNm: 80,
      highestNm: 1000,
      resolutionNm: 0.5,
      angleResolutionDeg: 0.5,
      leverMm: 1250,
      connection: { kind: 'simulated', seed: 103 },
      calibration: calibrated(now, 'KH-C-0415', {
        daysAgo: 40,
        maximumDeviationPercent: 1.3,
        expandedUncertaintyPercent: 1,
      }),
    },
    {
      id: demoId('wrench old'),
      name: 'Old setting wrench',
      serial: 'KH-007',
      type: 'II',
      class: 'A',
      lowestNm: 40,
      highestNm: 220,
      resolutionNm: 1,
      leverMm: 500,
      connection: { kind: 'typed' },
      calibration: calibrated(now, 'KH-C-0301', {
        daysAgo: 402,
        maximumDeviationPercent: 3.1,
        expandedUncertaintyPercent: 1.6,
      }),
    },
    {
      id: demoId('wrench dial'),
      name: 'Dial wrench',
      serial: 'KH-021',
      type: 'I',
      class: 'B',
      lowestNm: 30,
      highestNm: 180,
      resolutionNm: 1,
      leverMm: 460,
      connection: { kind: 'typed' },
      calibration: calibrated(now, 'KH-C-0407', {
        daysAgo: 150,
        maximumDeviationPercent: 1.8,
        expandedUncertaintyPercent: 1.2,
      }),
    },
  ];
}

export const DEMO_ADAPTERS: readonly Adapter[] = [
  { id: demoId('adapter straight'), name: 'Open-end adapter 65 mm, straight', lengthMm: 65, angleDeg: 0 },
  { id: demoId('adapter square'), name: 'Open-end adapter 40 mm, square to the handle', lengthMm: 40, angleDeg: 90 },
  { id: demoId('adapter long'), name: 'Ring adapter 120 mm, 45°', lengthMm: 120, angleDeg: 45 },
];

export const DEMO_EXTENSIONS: readonly Extension[] = [
  { id: demoId('extension half'), name: 'Extension ½ in, 250 mm', lengthMm: 250, stiffnessNmPerDeg: 14.1 },
  { id: demoId('extension three-quarter'), name: 'Extension ¾ in, 400 mm', lengthMm: 400, stiffnessNmPerDeg: 44.7 },
];
