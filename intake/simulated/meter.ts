import type { Chance } from './chance.ts';
import type { Contact } from './mechanics.ts';
import type { WrenchModel } from './model.ts';

/** Angle that the wrench can see: its own torsion is taken out, that of the extension is not, degrees. */
export const visibleDeg = (wrench: WrenchModel, contact: Contact): number =>
  contact.turnedDeg +
  contact.slippedDeg +
  (wrench.extensionStiffnessNmPerDeg === undefined ? 0 : contact.torqueNm / wrench.extensionStiffnessNmPerDeg);

/** Torque that the wrench feels: with an adapter not what the fastener gets, N·m. */
export const feltTorqueNm = (wrench: WrenchModel, contact: Contact): number =>
  contact.torqueNm / wrench.fastenerOverShown;

/**
 * Angle that the wrench counts on a small way from one contact to the next: turning forward and back as long as
 * the torque is above the threshold, so that a ratchet stroke let go and taken up again adds nothing.
 */
export function countedDeg(wrench: WrenchModel, from: Contact, to: Contact, thresholdNm: number): number {
  const fromNm = feltTorqueNm(wrench, from);
  const toNm = feltTorqueNm(wrench, to);
  const wayDeg = visibleDeg(wrench, to) - visibleDeg(wrench, from);
  if (fromNm >= thresholdNm && toNm >= thresholdNm) return wayDeg;
  if (fromNm < thresholdNm && toNm < thresholdNm) return 0;
  return (wayDeg * (Math.max(fromNm, toNm) - thresholdNm)) / Math.abs(toNm - fromNm);
}

/** One reading of torque: with noise, in steps of the display, N·m. */
export const sampledTorqueNm = (wrench: WrenchModel, torqueNm: number, chance: Chance): number =>
  inSteps(torqueNm + chance.normal(0, wrench.noiseNm), wrench.resolutionNm);

/** Nearest whole number of steps; the decimals that the division leaves are cut. */
export const inSteps = (value: number, step: number): number =>
  Number((Math.round(value / step) * step).toFixed(6)) + 0;
