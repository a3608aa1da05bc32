import type { ThreadAndBearing } from './thread-and-bearing.ts';

/**
 * Which edition's reckoning of the twisted shank. Since 2001 the torsion of a shank about to yield is spread over the
 * whole section (W = π·d³/12), before it was reckoned elastic (W = π·d³/16); tables of both are in circulation.
 */
export const EDITIONS = ['VDI 2230:2001', 'VDI 2230:1986'] as const;
export type Edition = (typeof EDITIONS)[number];

/** π·d³ over the section modulus. */
export const TORSION_DIVISOR: Readonly<Record<Edition, number>> = { 'VDI 2230:2001': 12, 'VDI 2230:1986': 16 };

export interface ShankStress {
  readonly tensionMPa: number;
  readonly torsionMPa: number;
  readonly vonMisesMPa: number;
}

/**
 * Stress in the shank while it is tightened.
 *
 * @param twistNm torque in the shank: of pitch and thread friction, and the prevailing torque
 * @source VDI 2230-1:2015, R7: σ_red = √(σ² + 3·τ²), A0 = π·d0²/4, W_P = π·d0³/12
 */
export function shankStress(
  preloadN: number,
  twistNm: number,
  { sectionDiameterMm }: ThreadAndBearing,
  edition: Edition = 'VDI 2230:2001',
): ShankStress {
  const tensionMPa = (4 * preloadN) / (Math.PI * sectionDiameterMm ** 2);
  const torsionMPa = (TORSION_DIVISOR[edition] * 1000 * twistNm) / (Math.PI * sectionDiameterMm ** 3);
  return { tensionMPa, torsionMPa, vonMisesMPa: Math.sqrt(tensionMPa ** 2 + 3 * torsionMPa ** 2) };
}

/**
 * Preload at which the equivalent stress in the shank reaches a limit.
 *
 * @param limitMPa     utilization times yield strength
 * @param twistArmMm   torque in the shank over preload: pitch and thread friction
 * @param prevailingNm torque that twists the shank without stretching it
 * @returns N; undefined when the prevailing torque alone reaches the limit
 * @source VDI 2230-1:2015, assembly preload F_M; solved with the prevailing torque in the shank, which the guideline's
 *         own form leaves out
 */
export function preloadAtStress(
  limitMPa: number,
  twistArmMm: number,
  prevailingNm: number,
  { sectionDiameterMm }: ThreadAndBearing,
  edition: Edition = 'VDI 2230:2001',
): number | undefined {
  const tensionPerN = 4 / (Math.PI * sectionDiameterMm ** 2);
  const torsionPerNmm = (Math.sqrt(3) * TORSION_DIVISOR[edition]) / (Math.PI * sectionDiameterMm ** 3);
  const restMPa = torsionPerNmm * 1000 * prevailingNm;
  if (restMPa >= limitMPa) return undefined;
  // (t·F)² + (p·c·F + r)² = limit², the positive root.
  const slope = torsionPerNmm * twistArmMm;
  const square = tensionPerN ** 2 + slope ** 2;
  const half = slope * restMPa;
  return (Math.sqrt(half ** 2 + square * (limitMPa ** 2 - restMPa ** 2)) - half) / square;
}
