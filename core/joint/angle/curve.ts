import type { Friction } from '../torque/thread-and-bearing.ts';
import { type Stretch, travelMm, turnDeg } from './stretch.ts';
import { type TurnedJoint, torqueNm } from './turned-joint.ts';

/** One point of what a tightening is expected to look like. */
export interface CurvePoint {
  readonly angleDeg: number;
  readonly preloadN: number;
  readonly torqueNm?: number;
}

const POINTS = 32;

/**
 * Preload, and torque where friction is known, over the angle from snug.
 *
 * @param corner preload at which the run bends; it becomes a point of its own
 */
export function expectedCurve(
  joint: TurnedJoint,
  stretch: Stretch,
  friction: Friction | undefined,
  { snugN, endN, cornerN }: { readonly snugN: number; readonly endN: number; readonly cornerN: number },
): readonly CurvePoint[] {
  const evenly = Array.from({ length: POINTS + 1 }, (_, step) => snugN + ((endN - snugN) * step) / POINTS);
  const corner = cornerN > snugN && cornerN < endN ? [cornerN] : [];
  const snugMm = travelMm(stretch, snugN);
  return [...evenly, ...corner]
    .toSorted((a, b) => a - b)
    .map((preloadN) => ({
      angleDeg: turnDeg(travelMm(stretch, preloadN) - snugMm, joint.geometry.pitchMm),
      preloadN,
      ...(friction === undefined ? {} : { torqueNm: torqueNm(joint, friction, preloadN) }),
    }));
}
