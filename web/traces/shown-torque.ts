import { convertTorque, type Language, showNumber, type TorqueUnit } from '@clampwright/core/quantity';

/**
 * A torque of a curve, to a hundredth of its highest: near nothing more digits would say more than the wrench knows.
 *
 * @param peakNm highest torque of the curve, N·m
 */
export function showTraceTorque(torqueNm: number, peakNm: number, unit: TorqueUnit, language: Language): string {
  const peak = Math.abs(convertTorque(peakNm, 'N·m', unit));
  const decimals = peak > 0 ? Math.max(0, Math.min(4, 2 - Math.floor(Math.log10(peak)))) : 0;
  return `${showNumber(convertTorque(torqueNm, 'N·m', unit), language, { decimals })}\u00a0${unit}`;
}
