import type { Adapter, Extension, Wrench } from '@clampwright/core/wrench';
import { type DemoCalibration, demoCalibrations, summaryOn } from './care/calibrations.ts';
import { demoId } from './identity.ts';

const BENCH = 'Tool crib, valley workshop';

/** Wrenches of the invented workshop, without their calibrations. */
const WRENCHES: readonly Wrench[] = [
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
    driveMm: 10,
    place: BENCH,
    connection: { kind: 'simulated', seed: 101 },
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
    driveMm: 12.5,
    place: BENCH,
    connection: { kind: 'simulated', seed: 102 },
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
    driveMm: 20,
    place: 'Rope vehicle, tool box',
    heldBy: 'Tamsin Orrell',
    connection: { kind: 'simulated', seed: 103 },
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
    driveMm: 12.5,
    place: BENCH,
    connection: { kind: 'typed' },
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
    driveMm: 12.5,
    place: BENCH,
    connection: { kind: 'typed' },
  },
];

/** The wrenches with the calibration that held on a day; one of them is overdue, one soon will be. */
export const wrenchesOn = (calibrations: readonly DemoCalibration[], day: string): readonly Wrench[] =>
  WRENCHES.map((wrench) => {
    const calibration = summaryOn(calibrations, wrench.id, day);
    return calibration ? { ...wrench, calibration } : wrench;
  });

/** Every calibration there ever was of them, the oldest first. */
export const demoHistory = (now: Date): readonly DemoCalibration[] => demoCalibrations(now, WRENCHES);

export const DEMO_ADAPTERS: readonly Adapter[] = [
  { id: demoId('adapter straight'), name: 'Open-end adapter 65 mm, straight', lengthMm: 65, angleDeg: 0 },
  { id: demoId('adapter square'), name: 'Open-end adapter 40 mm, square to the handle', lengthMm: 40, angleDeg: 90 },
  { id: demoId('adapter long'), name: 'Ring adapter 120 mm, 45°', lengthMm: 120, angleDeg: 45 },
];

export const DEMO_EXTENSIONS: readonly Extension[] = [
  { id: demoId('extension half'), name: 'Extension ½ in, 250 mm', lengthMm: 250, stiffnessNmPerDeg: 14.1 },
  { id: demoId('extension three-quarter'), name: 'Extension ¾ in, 400 mm', lengthMm: 400, stiffnessNmPerDeg: 44.7 },
];
