import type { CalibrationSummary, Wrench } from '../wrench.ts';

/** A wrench for tests: 20 to 200 N·m, steps of 0.1 N·m, calibrated until 2026-06-30 with U = 1 %. */
export function aWrench(more: Partial<Wrench> = {}, calibration: Partial<CalibrationSummary> = {}): Wrench {
  return {
    id: '00000000-0000-4000-8000-000000000001',
    name: 'Bench wrench',
    serial: 'T-1',
    type: 'I',
    class: 'C',
    lowestNm: 20,
    highestNm: 200,
    resolutionNm: 0.1,
    angleResolutionDeg: 0.5,
    leverMm: 400,
    connection: { kind: 'typed' },
    calibration: {
      calibratedOn: '2025-07-01',
      dueOn: '2026-06-30',
      certificate: 'C-1',
      by: 'a bench',
      maximumDeviationPercent: 1,
      expandedUncertaintyPercent: 1,
      ...calibration,
    },
    ...more,
  };
}

/** The same wrench before its first calibration. */
export function uncalibrated(): Wrench {
  const { calibration: _, ...wrench } = aWrench();
  return wrench;
}
