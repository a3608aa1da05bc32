import { type Friction, type ThreadAndBearing, torqueArms, wholeArmMm } from './thread-and-bearing.ts';

/** Torque and how it divides; fractions whose sum is 1. */
export interface TorqueShares {
  readonly torqueNm: number;
  readonly shares: { readonly pitch: number; readonly thread: number; readonly bearing: number };
}

/**
 * Torque that a fastener needs for a preload, without prevailing torque.
 *
 * @param preloadN clamp force, N, at least 0
 * @source ISO 16047:2005; VDI 2230-1:2015, assembly torque
 */
export function torqueForPreload(preloadN: number, geometry: ThreadAndBearing, friction: Friction): TorqueShares {
  const arms = torqueArms(geometry, friction);
  const armMm = wholeArmMm(arms);
  return {
    torqueNm: (preloadN * armMm) / 1000,
    shares: { pitch: arms.pitchMm / armMm, thread: arms.threadMm / armMm, bearing: arms.bearingMm / armMm },
  };
}

/**
 * Preload that a torque brings, the inverse of `torqueForPreload`.
 *
 * @param torqueNm clamping torque, what is over the prevailing torque, N·m
 */
export const preloadForTorque = (torqueNm: number, geometry: ThreadAndBearing, friction: Friction): number =>
  (1000 * torqueNm) / wholeArmMm(torqueArms(geometry, friction));

/** K of the short form T = K·d·F. */
export const nutFactorOf = (geometry: ThreadAndBearing, friction: Friction): number =>
  wholeArmMm(torqueArms(geometry, friction)) / geometry.majorDiameterMm;

/**
 * The one coefficient for thread and bearing face that gives a nut factor: how K divides between them is not in K.
 *
 * @returns zero or less when K is not even enough for the pitch
 * @source ISO 16047:2005, total friction: μ_tot = (T/F − P/(2π))/(0.577·d2 + 0.5·D_b)
 */
export function frictionForNutFactor(nutFactor: number, geometry: ThreadAndBearing): number {
  const { pitchMm, threadMm, bearingMm } = torqueArms(geometry, { thread: 1, bearing: 1 });
  return (nutFactor * geometry.majorDiameterMm - pitchMm) / (threadMm + bearingMm);
}
