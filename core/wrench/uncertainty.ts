import { appliedTorque, type Lever } from '../procedure/setting.ts';
import { type AtTorque, interpolated } from './interpolate.ts';
import type { Adapter, CalibratedPoint, CalibrationSummary, Tool, Wrench } from './wrench.ts';

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
  const calibrationNm = ofCalibrationNm(wrench.calibration, Math.abs(torqueNm)) / 2;
  const resolutionNm = wrench.resolutionNm / (2 * Math.sqrt(3));
  return 2 * Math.hypot(calibrationNm, resolutionNm);
}

/**
 * Where the points of the calibration are known: the deviation, which nobody corrects for, and the uncertainty, each
 * between its points. Below the lowest point neither gets smaller in N·m. A summary typed from paper has one figure.
 *
 * @source ISO 6789-2:2017: interval W′ = |a_s| + W (from memory); JCGM 100:2008, F.2.4.5, known error not corrected
 */
function ofCalibrationNm({ points, expandedUncertaintyPercent }: CalibrationSummary, torqueNm: number): number {
  if (!points) return (expandedUncertaintyPercent / 100) * torqueNm;
  const intervals = worstOverDirections(points);
  const lowestNm = Math.min(...intervals.map((point) => point.torqueNm));
  return (interpolated(intervals, torqueNm) / 100) * Math.max(torqueNm, lowestNm);
}

/** W′ at each torque; a pull does not tell its direction, so the worse one counts. */
function worstOverDirections(points: readonly CalibratedPoint[]): readonly AtTorque[] {
  const worst = new Map<number, number>();
  for (const { torqueNm, deviationPercent, expandedUncertaintyPercent } of points) {
    const value = Math.abs(deviationPercent) + expandedUncertaintyPercent;
    worst.set(torqueNm, Math.max(value, worst.get(torqueNm) ?? 0));
  }
  return [...worst].map(([torqueNm, value]) => ({ torqueNm, value }));
}

/** A length read from a rule, somewhere within 1 mm on either side (common practice). */
const RULE_MM = 1 / Math.sqrt(3);

/** The hand somewhere within 10 mm on either side of its point, as ISO 6789-2:2017 varies it (from memory). */
const HAND_MM = 10 / Math.sqrt(3);

/**
 * Expanded uncertainty of the torque at the fastener: the wrench's own, carried over the adapter's lever, the length of
 * the adapter and the place of the hand, and what the extension brings in.
 *
 * T = T_w (L + E cos a)/L; ∂T/∂E = T_w cos a/L; ∂T/∂L = −T_w E cos a/L²
 *
 * @param torqueNm at the fastener
 * @returns k = 2, N·m; undefined when the wrench was never calibrated
 * @source JCGM 100:2008, 5.1.2
 */
export function uncertaintyAtFastenerNm(torqueNm: number, tool: Tool): number | undefined {
  const { wrench, adapter, extension } = tool;
  const factor = leverFactor(wrench.leverMm, adapter);
  const shownNm = torqueNm / factor;
  const wrenchNm = expandedUncertaintyNm(wrench, shownNm);
  if (wrenchNm === undefined) return undefined;
  const extensionNm = (Math.abs(torqueNm) * (extension?.torqueStandardUncertaintyPercent ?? 0)) / 100;
  return 2 * Math.hypot((factor * wrenchNm) / 2, ...leverParts(shownNm, wrench.leverMm, factor, adapter), extensionNm);
}

function leverFactor(leverMm: number, adapter: Lever | undefined): number {
  const lever = appliedTorque(1, leverMm, adapter);
  if (!lever.ok) throw new Error('a tool that was taken has a lever that is possible');
  return lever.value.factor;
}

/** Standard uncertainties, N·m; square to the handle the adapter changes nothing and brings none in. */
function leverParts(
  shownNm: number,
  leverMm: number,
  factor: number,
  adapter: Adapter | undefined,
): readonly [number, number] {
  if (!adapter) return [0, 0];
  const alongMm = (factor - 1) * leverMm;
  const cosine = alongMm / adapter.lengthMm;
  const lengthMm = adapter.lengthStandardUncertaintyMm ?? RULE_MM;
  return [(shownNm * cosine * lengthMm) / leverMm, (shownNm * alongMm * HAND_MM) / leverMm ** 2];
}

/**
 * Standard uncertainty of the angle that an extension's wind-up was taken off from.
 *
 * @param windUpDeg how far the extension was twisted
 * @returns degrees; 0 where the stiffness was told without an uncertainty
 */
export const windUpUncertaintyDeg = (windUpDeg: number, { extension }: Tool): number =>
  (windUpDeg * (extension?.stiffnessStandardUncertaintyPercent ?? 0)) / 100;
