import type { Wrench } from './wrench.ts';

/**
 * Expanded uncertainty of one torque shown by a wrench: what its calibration says, and the last step of its display.
 *
 * U = 2 sqrt(u_cal^2 + u_res^2), u_cal = U_cal / 2, u_res = resolution / (2 sqrt 3)
 *
 * @param torqueNm torque as the wrench shows it; its size counts
 * @returns k = 2, N·m; undefined when the wrench was never calibrated: nobody knows
 * @source JCGM 100:2008 (GUM), 4.3.7 rectangular distribution, 5.1.2 combination, 6.2 expanded uncertainty
 */
export function expandedUncertaintyNm(wrench: Wrench, torqueNm: number): number | undefined {
  if (!wrench.calibration) return undefined;
  const calibrationNm = ((wrench.calibration.expandedUncertaintyPercent / 100) * Math.abs(torqueNm)) / 2;
  const resolutionNm = wrench.resolutionNm / (2 * Math.sqrt(3));
  return 2 * Math.hypot(calibrationNm, resolutionNm);
}
