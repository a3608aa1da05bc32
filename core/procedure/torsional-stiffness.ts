/** Shear modulus of steel, MPa (common practice). */
export const STEEL_SHEAR_MPA = 79_300;

/** N·mm a radian as N·m a degree. */
const perDegree = (nmmPerRad: number): number => (nmmPerRad * Math.PI) / 180 / 1000;

/**
 * How hard a round bar is to twist, N·m a degree.
 *
 * @param diameterMm outer, `boreMm` inner diameter, `lengthMm` between its squares
 * @source torsion of a bar: k = G·J/L, J = π·(d⁴ − d_i⁴)/32
 */
export const roundBarNmPerDeg = (diameterMm: number, boreMm: number, lengthMm: number): number =>
  perDegree((STEEL_SHEAR_MPA * Math.PI * (diameterMm ** 4 - boreMm ** 4)) / (32 * lengthMm));

/**
 * How hard a square drive is to twist, N·m a degree.
 *
 * @source torsion of a square: J = 0.1406·a⁴ (Roark's Formulas for Stress and Strain, from memory)
 */
export const squareBarNmPerDeg = (acrossFlatsMm: number, lengthMm: number): number =>
  perDegree((STEEL_SHEAR_MPA * 0.1406 * acrossFlatsMm ** 4) / lengthMm);

/** Of parts that follow one another, N·m a degree. */
export const inRowNmPerDeg = (stiffnesses: readonly number[]): number =>
  1 / stiffnesses.reduce((sum, nmPerDeg) => sum + 1 / nmPerDeg, 0);
