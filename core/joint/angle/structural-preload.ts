/** Nominal tensile strengths to which EN 1090-2 preloads. */
const EN_1090_2_TENSILE_MPA: Readonly<Record<string, number>> = { '8.8': 800, '10.9': 1000 };

const SHARE_OF_TENSILE = 0.7;

/**
 * F_p,C, the preload of a structural bolt.
 *
 * @returns undefined for classes that the code does not preload
 * @source EN 1090-2, 8.5.1 and EN 1993-1-8, 3.9.1: F_p,C = 0.7·f_ub·A_s, f_ub 800 or 1000 MPa
 */
export function en1090PreloadN(propertyClass: string, stressAreaMm2: number): number | undefined {
  const tensileMPa = EN_1090_2_TENSILE_MPA[propertyClass];
  return tensileMPa === undefined ? undefined : SHARE_OF_TENSILE * tensileMPa * stressAreaMm2;
}

/**
 * Least pretension of a structural bolt.
 *
 * @source AISC 360, table J3.1 and RCSC, table 8.1: 0.70·F_u·A_t
 */
export const rcscPretensionN = (tensileMPa: number, stressAreaMm2: number): number =>
  SHARE_OF_TENSILE * tensileMPa * stressAreaMm2;
