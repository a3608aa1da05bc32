import type { Curve } from './curve.ts';

/** How much turning builds the torque up. */
export interface JointRate {
  /** From a tenth of the torque to the whole of it, degrees. */
  readonly from10Deg: number;
  readonly from50Deg: number;
  readonly kind: 'hard' | 'medium' | 'soft';
}

const HARD_DEG = 27;
const SOFT_DEG = 324;

/**
 * Joint rate: turning from 10 % to 100 % of a torque.
 *
 * @source ISO 5393:2017 by two secondary accounts: hard up to 27°, soft from 324°, which are nine tenths of 30° and
 *         360°; from 50 %: VDI/VDE 2647, in the same accounts
 */
export function jointRateOf(curve: Curve, torqueNm: number): JointRate | undefined {
  const end = crossingDeg(curve, torqueNm) ?? endDeg(curve, torqueNm);
  const ten = crossingDeg(curve, 0.1 * torqueNm, end);
  const half = crossingDeg(curve, 0.5 * torqueNm, end);
  if (end === undefined || ten === undefined || half === undefined) return undefined;
  const from10Deg = end - ten;
  const kind = from10Deg <= HARD_DEG ? 'hard' : from10Deg >= SOFT_DEG ? 'soft' : 'medium';
  return { from10Deg, from50Deg: end - half, kind };
}

/** A peak on the last samples lies beyond the last point of the curve, which is a mean. */
const endDeg = ({ extremes, last }: Curve, torqueNm: number): number | undefined =>
  extremes.peakNm >= torqueNm && extremes.peakIndex >= last.index ? last.angleDeg : undefined;

/** Where a torque is first reached, or, looking back from an angle, where it was last passed on the way up. */
export function crossingDeg({ angleDeg, torqueNm, count }: Curve, nm: number, beforeDeg?: number): number | undefined {
  let i = 0;
  if (beforeDeg === undefined) while (i < count && torqueNm[i]! < nm) i++;
  else {
    i = count - 1;
    while (i > 0 && angleDeg[i]! > beforeDeg) i--;
    while (i > 0 && torqueNm[i - 1]! >= nm) i--;
  }
  if (i >= count) return undefined;
  if (i === 0) return angleDeg[0];
  const rise = torqueNm[i]! - torqueNm[i - 1]!;
  const share = rise > 0 ? Math.min(1, Math.max(0, (nm - torqueNm[i - 1]!) / rise)) : 1;
  return angleDeg[i - 1]! + share * (angleDeg[i]! - angleDeg[i - 1]!);
}
