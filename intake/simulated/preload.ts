import type { JointModel } from './model.ts';

const COS_HALF_FLANK = Math.cos(Math.PI / 6);

/**
 * Torque that a preload asks for in motion, per newton of it: long form.
 *
 * @returns N·m per N
 * @source ISO 16047:2005: T = F (P/2π + μth d2/(2 cos 30°) + μb Db/2) (*from memory*); VDI 2230-1 rounds to 0.16 P and 0.58 d2
 */
export function torquePerPreloadM(
  joint: Pick<JointModel, 'pitchMm' | 'pitchDiameterMm' | 'meanBearingDiameterMm'>,
  threadFriction: number,
  bearingFriction: number,
): number {
  const pitchMm = joint.pitchMm / (2 * Math.PI);
  const threadMm = (threadFriction * joint.pitchDiameterMm) / (2 * COS_HALF_FLANK);
  const bearingMm = (bearingFriction * joint.meanBearingDiameterMm) / 2;
  return (pitchMm + threadMm + bearingMm) / 1000;
}

/** Elastic preload gained by one degree of turning: stiffness times P/360, N. */
export const preloadPerDegree = (joint: Pick<JointModel, 'pitchMm' | 'stiffnessNPerMm'>): number =>
  (joint.stiffnessNPerMm * joint.pitchMm) / 360;

/** What of a fastener limits the preload it carries, N. */
interface Strength {
  readonly yieldPreloadN: number;
  readonly shearPreloadN: number | undefined;
  readonly bottomFromDeg?: number | undefined;
  readonly stiffnessRatio?: number;
}

/** The end of a screw on the ground of its hole is so many times as stiff as the joint. */
const GROUND = 4;

/**
 * Preload after so much turning from first contact: a parabola while the parts come together, a straight line, and
 * after yield a slope that falls exponentially to its plastic share. A thread that shears lets go of it.
 *
 * @source elastic line F = K P θ/360 (textbook); the shape of the transitions is a convention of this model
 */
export function carriedPreloadN(joint: JointModel, strength: Strength, turnedDeg: number): number {
  const wantedN = strainedPreloadN(joint, strength.yieldPreloadN, strainedDeg(strength, turnedDeg));
  const { shearPreloadN } = strength;
  if (shearPreloadN === undefined || wantedN <= shearPreloadN) return wantedN;
  return Math.max(shearPreloadN / 5, shearPreloadN - 0.5 * (wantedN - shearPreloadN));
}

/** Turning that a sound fastener would have wanted for the same preload. */
function strainedDeg({ bottomFromDeg, stiffnessRatio = 1 }: Strength, turnedDeg: number): number {
  const softDeg = turnedDeg > 0 ? turnedDeg * stiffnessRatio : turnedDeg;
  if (bottomFromDeg === undefined || softDeg <= bottomFromDeg) return softDeg;
  return bottomFromDeg + GROUND * (softDeg - bottomFromDeg);
}

function strainedPreloadN(joint: JointModel, yieldPreloadN: number, turnedDeg: number): number {
  const slope = preloadPerDegree(joint);
  const { alignmentDeg, plasticShare, plasticSpanDeg } = joint;
  if (turnedDeg <= 0) return 0;
  if (turnedDeg < alignmentDeg) return (slope * turnedDeg * turnedDeg) / (2 * alignmentDeg);
  const elasticN = slope * (turnedDeg - alignmentDeg / 2);
  if (elasticN <= yieldPreloadN) return elasticN;
  const beyondDeg = (elasticN - yieldPreloadN) / slope;
  const fadingDeg = plasticSpanDeg * (1 - Math.exp(-beyondDeg / plasticSpanDeg));
  return yieldPreloadN + slope * (plasticShare * beyondDeg + (1 - plasticShare) * fadingDeg);
}
