/** A pair of flanges with eight bolts on a soft gasket, as every calculation of rounds has it in its example. */
export const RING_EXAMPLE = {
  kind: 'ring',
  count: 8,
  boltCircleMm: 260,
  outerMm: 290,
  innerMm: 190,
  heightMm: 35,
  gasketOuterMm: 234,
  gasketInnerMm: 206,
  gasketThicknessMm: 3,
  gasketMPa: 350,
  boltNPerMm: 834_545,
} as const;
