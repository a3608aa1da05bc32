import type { Calibration, Comparison } from '../calibration.ts';
import type { ReferenceStandard } from '../reference-standard.ts';

/** A reference for tests: 5 to 250 N·m, U = 0.5 %, in calibration all through 2026. */
export const aReference = (more: Partial<ReferenceStandard> = {}): ReferenceStandard => ({
  id: '00000000-0000-4000-8000-0000000000a1',
  name: 'Transducer',
  serial: 'R-7',
  lowestNm: 5,
  highestNm: 250,
  certificate: 'R-2026-1',
  by: 'a laboratory',
  calibratedOn: '2026-01-01',
  dueOn: '2026-12-31',
  expandedUncertaintyPercent: 0.5,
  ...more,
});

/** A good run on the wrench of 20 to 200 N·m: deviations of about 1 %. */
export const aComparison = (more: Partial<Comparison> = {}): Comparison => ({
  at: '2026-06-01T09:00:00.000Z',
  preloadings: 5,
  spreads: {},
  points: [20, 40, 120, 200].map((targetNm) => ({
    direction: 'clockwise',
    targetNm,
    referenceNm: [0.989, 0.991, 0.99, 0.992, 0.988].map((share) => share * targetNm),
  })),
  ...more,
});

export const aCalibration = (more: Partial<Calibration> = {}): Calibration => ({
  id: '00000000-0000-4000-8000-0000000000c1',
  wrenchId: '00000000-0000-4000-8000-000000000001',
  calibratedOn: '2026-06-01',
  dueOn: '2027-06-01',
  certificate: 'C-2',
  by: 'the keeper',
  temperatureC: 21,
  humidityPercent: 45,
  reference: aReference(),
  asFound: aComparison(),
  ...more,
});
