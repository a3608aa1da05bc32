/** A made curve with exact answers, torque as a closed formula of the angle. */
export interface MadeCurve {
  readonly angleDeg: number[];
  readonly torqueNm: number[];
}

export const SLOPE = 1.6;
export const PREVAILING_NM = 4;
export const SNUG_DEG = 105;
/** Slope falls to a half: 190 + 12 ln(0.85/0.35). */
export const HALF_SLOPE_DEG = 190 + 12 * Math.log(0.85 / 0.35);

/** 4 N·m to 90°, a parabola to 120°, straight to 190°, then yield that fades exponentially to 15 % of the slope. */
export function exactTorqueNm(deg: number): number {
  if (deg <= 90) return PREVAILING_NM;
  if (deg <= 120) return PREVAILING_NM + (SLOPE * (deg - 90) ** 2) / 60;
  if (deg <= 190) return 28 + SLOPE * (deg - 120);
  const beyond = deg - 190;
  return 140 + SLOPE * (0.15 * beyond + 0.85 * 12 * (1 - Math.exp(-beyond / 12)));
}

export function madeCurve(stepDeg = 0.5, toDeg = 230, torqueAt: (deg: number) => number = exactTorqueNm): MadeCurve {
  const angleDeg = Array.from({ length: Math.round(toDeg / stepDeg) + 1 }, (_, i) => i * stepDeg);
  return { angleDeg, torqueNm: angleDeg.map(torqueAt) };
}
