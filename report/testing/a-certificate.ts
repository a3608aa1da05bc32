import type { Certified, CertifiedRun } from '@clampwright/core/record';
import { type Calibration, type Comparison, evaluateCalibration, type Wrench } from '@clampwright/core/wrench';

const wrench: Wrench = {
  id: '01890000-0000-7000-8000-0000000000b1',
  name: 'Click wrench <40–200> & “bench”',
  serial: 'KH-77',
  type: 'II',
  class: 'A',
  lowestNm: 40,
  highestNm: 200,
  resolutionNm: 1,
  leverMm: 420,
  driveMm: 12.5,
  connection: { kind: 'typed' },
};

const comparison = (at: string, shares: readonly number[]): Comparison => ({
  at,
  preloadings: 5,
  spreads: { reproducibility: 0.2, outputInterface: 0.15 },
  points: [40, 120, 200].map((targetNm) => ({
    direction: 'clockwise',
    targetNm,
    referenceNm: shares.map((share) => share * targetNm),
  })),
});

const calibration: Calibration = {
  id: '01890000-0000-7000-8000-0000000000c1',
  wrenchId: wrench.id,
  calibratedOn: '2026-06-01',
  dueOn: '2027-06-01',
  certificate: 'KH-C-0419',
  by: 'Mira Zurbriggen',
  place: 'Valley workshop',
  temperatureC: 21.5,
  humidityPercent: 44,
  reference: {
    id: '01890000-0000-7000-8000-0000000000d1',
    name: 'Transducer 250',
    serial: 'R-7',
    lowestNm: 5,
    highestNm: 250,
    certificate: 'R-2026-1',
    by: 'a laboratory',
    calibratedOn: '2026-01-01',
    dueOn: '2026-12-31',
    expandedUncertaintyPercent: 0.5,
  },
  asFound: comparison('2026-06-01T08:00:00.000Z', [0.951, 0.949, 0.952, 0.95, 0.95]),
  asLeft: comparison('2026-06-01T09:00:00.000Z', [0.998, 1.001, 0.9999999999999, 1.002, 0.999]),
  note: 'Spring set anew.',
};

function run({ points, spreads }: Comparison): readonly CertifiedRun[] {
  const { type, class: name, highestNm: maxTorqueNm, resolutionNm } = wrench;
  const evaluated = evaluateCalibration({
    type,
    class: name,
    maxTorqueNm,
    resolutionNm,
    points,
    referenceUncertaintyPercent: calibration.reference.expandedUncertaintyPercent,
    ...spreads,
  });
  if (!evaluated.ok) throw new Error(JSON.stringify(evaluated.failure));
  return [{ direction: 'clockwise', evaluated: evaluated.value }];
}

/** A wrench found 5 % off, set anew and left good. */
export const aCertificate: Certified = {
  calibration,
  wrench,
  found: run(calibration.asFound),
  left: run(calibration.asLeft!),
};
