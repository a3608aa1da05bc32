import { bringToPlace } from '../statistics/order-statistics.ts';
import type { Curve } from './curve.ts';
import type { Phases } from './phases.ts';

/** Torque that turns the fastener before anything is clamped. */
export interface Prevailing {
  /** Median; 0 where no run-down is seen. */
  readonly torqueNm: number;
  readonly highestNm: number;
  /** How far the fastener ran down, degrees. */
  readonly turnDeg: number;
}

const NONE: Prevailing = { torqueNm: 0, highestNm: 0, turnDeg: 0 };
/** Slope under this share of the elastic one is no clamping (common practice). */
const FLAT = 0.1;

/** Median torque of the run-down: the flat part before snug. */
export function prevailingOf({ angleDeg, torqueNm }: Curve, { elastic, snug, gradient }: Phases): Prevailing {
  if (!elastic || !snug || snug.point < 3) return NONE;
  const bound = FLAT * elastic.line.slope + 2 * gradient.error;
  const flat = new Float64Array(snug.point);
  let count = 0;
  let highestNm = Number.NEGATIVE_INFINITY;
  let turnDeg = 0;
  for (let i = 1; i < snug.point; i++) {
    if (Math.abs(gradient.slope[i]!) > bound) continue;
    flat[count++] = torqueNm[i]!;
    if (torqueNm[i]! > highestNm) highestNm = torqueNm[i]!;
    turnDeg += angleDeg[i]! - angleDeg[i - 1]!;
  }
  if (count < 3) return NONE;
  const middle = count >> 1;
  bringToPlace(flat, middle, 0, count - 1);
  return { torqueNm: flat[middle]!, highestNm, turnDeg };
}
