import type { Expectation } from './expectation.ts';

/** What the mechanics of a joint tell of the curve that tightens it. */
export interface CurveMechanics {
  /** Stiffness of bolt and parts in a row, as `compliance` gives it, N/mm. */
  readonly jointNPerMm: number;
  readonly pitchMm: number;
  /** Torque that goes with a preload, as `assembly-torque` gives it. */
  readonly torqueNm: number;
  readonly preloadN: number;
  readonly prevailingTorqueNm?: number | undefined;
}

/** Standard deviation of torque over preload, from friction and stiffness alike: common practice for unlike lots. */
const UNSURE = 0.2;

/**
 * Elastic slope and turning that a joint's mechanics lead to expect.
 *
 * slope = (T/F) · K · P/360; turning = F/(K · P/360)
 *
 * @source elastic line of tightening, any handbook of bolted joints
 */
export function expectationOf({
  jointNPerMm,
  pitchMm,
  torqueNm,
  preloadN,
  prevailingTorqueNm = 0,
}: CurveMechanics): Expectation {
  const preloadPerDeg = (jointNPerMm * pitchMm) / 360;
  const slope = ((torqueNm - prevailingTorqueNm) / preloadN) * preloadPerDeg;
  return {
    basis: 'mechanics',
    slopeNmPerDeg: { median: slope, deviation: UNSURE * slope },
    prevailingTorqueNm: { median: prevailingTorqueNm, deviation: UNSURE * prevailingTorqueNm },
  };
}

/** Of a stage that asks for torque and angle together: the slope that meets both, where the joint tells no stiffness. */
export function expectationOfWindows(torqueNm: number, fromNm: number, angleDeg: number): Expectation | undefined {
  const slope = (torqueNm - fromNm) / angleDeg;
  return slope > 0 ? { basis: 'mechanics', slopeNmPerDeg: { median: slope, deviation: UNSURE * slope } } : undefined;
}
