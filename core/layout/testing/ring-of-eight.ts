import type { RingModel } from '../interaction/model-schema.ts';

/** A soft flange of eight bolts, worked out beforehand by another program (numpy 2.4, 400 harmonics). */
export const RING_OF_EIGHT: RingModel = {
  kind: 'ring',
  count: 8,
  boltCircleMm: 260,
  outerMm: 290,
  innerMm: 190,
  heightMm: 35,
  // as narrow as the line that the gasket is in that program
  gasketOuterMm: 220.0014,
  gasketInnerMm: 219.9986,
  gasketThicknessMm: 0.0028,
  // half of the gasket is 3000 N/mm² along its own circle of 110 mm, against 120 mm of the centroid
  gasketMPa: (3000 * 120) / 110,
  modulusMPa: 200_000,
  poisson: 200_000 / 154_000 - 1,
  hubN: 0,
  boltNPerMm: (200_000 * 459) / 110,
};

export const STAR_OF_EIGHT = [1, 5, 3, 7, 2, 6, 4, 8] as const;
