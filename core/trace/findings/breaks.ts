import { confidenceOf, type Finding } from '../finding.ts';
import type { Evidence } from '../judged-by.ts';
import { fellAtOnce } from './stripping.ts';

/** A pause as long as this is no ratchet swinging back (common practice). */
const PAUSE_S = 2;
const REACHED = 0.95;
/** Without a clock only a torque that was there and came again tells two pulls. */
const REACHED_SURELY = 0.985;

/** Slipped socket: torque went at once while the angle ran on. */
export function slippedSocket({ curve, phases, wantedNm }: Evidence): Finding | undefined {
  const slip = curve.breaks.find(({ kind }) => kind === 'slip');
  const { top } = phases;
  const topNm = curve.torqueNm[top] ?? 0;
  const atEnd = curve.lost && topNm > 0.1 * wantedNm && fellAtOnce(curve, top, 0.9 * topNm);
  if (!slip && !atEnd) return undefined;
  const heldNm = slip?.heldNm ?? topNm;
  const limit = 0.3 * heldNm;
  const atDeg = slip?.atDeg ?? curve.angleDeg[top]!;
  return {
    kind: 'slipped-socket',
    confidence: confidenceOf(0, limit),
    atDeg,
    quantity: 'torque',
    value: heldNm,
    limit,
  };
}

/** Two pulls in one: the torque was there, was let go, and came again after a pause. */
export function twoPulls({ curve, figures, window, samples }: Evidence): Finding | undefined {
  const { timeS } = samples;
  const reached = window.lowerNm ?? (timeS ? REACHED : REACHED_SURELY) * (window.targetNm ?? figures.peakTorqueNm);
  const limit = Math.min(reached, REACHED_SURELY * figures.peakTorqueNm);
  const again = curve.breaks.find(({ kind, heldNm, index, backIndex }) => {
    if (kind === 'drop-out' || heldNm < limit) return false;
    return !timeS || timeS[backIndex]! - timeS[index]! >= PAUSE_S;
  });
  if (!again) return undefined;
  const { heldNm, atDeg } = again;
  return { kind: 'two-pulls', confidence: timeS ? 0.95 : 0.7, atDeg, quantity: 'torque', value: heldNm, limit };
}
