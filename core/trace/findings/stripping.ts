import { confidenceOf, type Finding } from '../finding.ts';
import type { Evidence } from '../judged-by.ts';

/** A fall of the torque by this share is more than friction does. */
const FALL = 0.1;
/** Torque that goes within less turning slipped, and was not stripped. */
const SLIP_DEG = 3;

/** Stripping: torque falls as the angle grows, and does not come back. */
export function stripping({ curve, phases, figures, wantedNm }: Evidence): Finding | undefined {
  const { angleDeg, torqueNm, count } = curve;
  const { top, gradient } = phases;
  const topNm = torqueNm[top] ?? 0;
  if (topNm < 0.15 * wantedNm) return undefined;
  const limit = topNm - Math.max(FALL * topNm, 5 * gradient.noiseNm);
  const lastNm = Math.max(torqueNm[count - 1] ?? 0, torqueNm[count - 2] ?? 0);
  const wayDeg = (angleDeg[count - 1] ?? 0) - (angleDeg[top] ?? 0);
  if (lastNm >= limit || wayDeg < SLIP_DEG || fellAtOnce(curve, top, limit)) return undefined;
  return {
    kind: 'stripping',
    confidence: confidenceOf(lastNm, limit),
    atDeg: angleDeg[top]!,
    quantity: 'torque',
    value: figures.finalTorqueNm,
    limit,
  };
}

/** From the top to a third of it within a few degrees. */
export function fellAtOnce({ angleDeg, torqueNm, count }: Evidence['curve'], top: number, limitNm: number): boolean {
  let held = top;
  while (held + 1 < count && torqueNm[held + 1]! >= limitNm) held++;
  let gone = held;
  while (gone < count && torqueNm[gone]! > 0.33 * torqueNm[top]!) gone++;
  return gone < count && angleDeg[gone]! - angleDeg[held]! <= SLIP_DEG;
}
