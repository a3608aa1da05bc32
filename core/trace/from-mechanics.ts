import type { Expectation } from './expectation.ts';

/** What the mechanics of a joint tell of the curve that tightens it. */
export interface CurveMechanics {
  /** Stiffness of bolt and parts in a row while the bolts beside it are loose, N/mm. */
  readonly softestNPerMm: number;
  /** The same once all of them are tight; for a bolt on its own the same figure. */
  readonly stiffestNPerMm: number;
  readonly pitchMm: number;
  /** Torque that goes with a preload, as `assembly-torque` gives it. */
  readonly torqueNm: number;
  readonly preloadN: number;
  readonly prevailingTorqueNm?: number | undefined;
}

/** Standard deviation of torque over preload, from friction and stiffness alike: common practice for unlike lots. */
const UNSURE = 0.2;

/**
 * Elastic slope that a joint's mechanics lead to expect: midway between neighbours loose and tight.
 *
 * slope = (T/F) · K · P/360
 *
 * @source elastic line of tightening, any handbook of bolted joints
 */
export function expectationOf({
  softestNPerMm,
  stiffestNPerMm,
  pitchMm,
  torqueNm,
  preloadN,
  prevailingTorqueNm = 0,
}: CurveMechanics): Expectation {
  const slopeOf = (jointNPerMm: number): number =>
    ((torqueNm - prevailingTorqueNm) / preloadN) * ((jointNPerMm * pitchMm) / 360);
  const softest = slopeOf(softestNPerMm);
  const slope = (softest + slopeOf(stiffestNPerMm)) / 2;
  return {
    basis: 'mechanics',
    slopeNmPerDeg: { median: slope, deviation: Math.max(UNSURE * slope, slope - softest) },
    ...(prevailingTorqueNm > 0
      ? { prevailingTorqueNm: { median: prevailingTorqueNm, deviation: UNSURE * prevailingTorqueNm } }
      : {}),
  };
}

/** Of a stage that asks for torque and angle together: the slope that meets both, where the joint tells no stiffness. */
export function expectationOfWindows(torqueNm: number, fromNm: number, angleDeg: number): Expectation | undefined {
  const slope = (torqueNm - fromNm) / angleDeg;
  return slope > 0 ? { basis: 'mechanics', slopeNmPerDeg: { median: slope, deviation: UNSURE * slope } } : undefined;
}
