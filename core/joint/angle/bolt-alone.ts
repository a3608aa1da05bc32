/** Lengths of a bolt, mm, as the handbook names them. */
interface BoltLengths {
  /** d_ts, diameter of the stress area. */
  readonly stressDiameterMm: number;
  readonly diameterMm: number;
  /** L_S, shank inside the joint. */
  readonly shankMm: number;
  /** L_J, the joint. */
  readonly jointMm: number;
  /** H_B, head; H_N, nut. */
  readonly headMm: number;
  readonly nutMm: number;
}

/**
 * Length of thread that would stretch as the bolt does.
 *
 * @source MIL-HDBK-60: L_B = (d_ts/d)²·(L_S + H_B/2) + L_J − L_S + H_N/2
 */
export const boltAloneLengthMm = (bolt: BoltLengths): number =>
  (bolt.stressDiameterMm / bolt.diameterMm) ** 2 * (bolt.shankMm + bolt.headMm / 2) +
  bolt.jointMm -
  bolt.shankMm +
  bolt.nutMm / 2;

/**
 * Turn that stretches the bolt alone to a stress; the parts are taken as rigid, so the true turn is larger.
 *
 * @param stressMPa over the stress area
 * @source MIL-HDBK-60: θ = 360·f_t·L_B/(E·L)
 */
export const boltAloneTurnDeg = (stressMPa: number, lengthMm: number, modulusMPa: number, leadMm: number): number =>
  (360 * stressMPa * lengthMm) / (modulusMPa * leadMm);

/** Heights of a usual hexagon head and nut in diameters (common practice). */
const HEAD_HEIGHT = 5 / 8;
const NUT_HEIGHT = 7 / 8;

/** A usual bolt of which shank and grip alone are known. */
export const usualLengths = (
  diameterMm: number,
  stressAreaMm2: number,
  shankMm: number,
  jointMm: number,
): BoltLengths => ({
  stressDiameterMm: Math.sqrt((4 * stressAreaMm2) / Math.PI),
  diameterMm,
  shankMm,
  jointMm,
  headMm: HEAD_HEIGHT * diameterMm,
  nutMm: NUT_HEIGHT * diameterMm,
});
