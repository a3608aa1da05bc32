import { convertTorque, type Language, showNumber, type TorqueUnit } from '@clampwright/core/quantity';

/** Finer differences of a slope mean nothing for a wrench. */
const MOST_DECIMALS = 4;

/**
 * Slope of a curve in the unit of the work, to the digit that its uncertainty leaves, such as 3.400 ± 0.007.
 *
 * @param standardErrorNmPerDeg told as ± twice of it; where it is not known, the slope is told to three digits alone
 */
export function shownSlope(
  slopeNmPerDeg: number,
  standardErrorNmPerDeg: number | undefined,
  unit: TorqueUnit,
  language: Language,
): string {
  const slope = convertTorque(slopeNmPerDeg, 'N·m', unit);
  const reach = convertTorque(2 * (standardErrorNmPerDeg ?? 0), 'N·m', unit);
  if (reach === 0) return `${showNumber(slope, language, { significant: 3 })}\u00a0${unit}/°`;
  const decimals = Math.min(MOST_DECIMALS, Math.max(0, -Math.floor(Math.log10(reach))));
  const figure = (nmPerDeg: number): string => showNumber(nmPerDeg, language, { decimals });
  return `${figure(slope)}\u00a0±\u00a0${figure(reach)}\u00a0${unit}/°`;
}
