import type { Friction } from '../torque/thread-and-bearing.ts';
import { ultimatePreloadN } from './stretch.ts';
import { preloadAfterTurnN, preloadAtTorqueN, stretchOf, type TurnedJoint, torqueNm } from './turned-joint.ts';

/** What a wrench should show at the end of a turn when friction lies within a range. */
export interface TorqueWindow {
  readonly lowNm: number;
  readonly highNm: number;
  readonly preloadLowN: number;
  readonly preloadHighN: number;
  /** At one end of the range the bolt would break. */
  readonly breaks: boolean;
}

/** The angle is counted from a torque, so that friction sets the preload there, or from a known preload. */
export type Snug = { readonly torqueNm: number } | { readonly preloadN: number };

/** Steps across the range; past yield torsion makes the torque bend, so that ends alone do not tell. */
const STEPS = 8;

/**
 * Torque and preload after a turn, over all pairs of thread and bearing friction within a range.
 *
 * @param lowest, highest friction of thread and bearing surface alike
 */
export function torqueWindow(
  joint: TurnedJoint,
  snug: Snug,
  angleDeg: number,
  { lowest, highest }: { readonly lowest: number; readonly highest: number },
): TorqueWindow {
  const across = Array.from({ length: STEPS + 1 }, (_, step) => lowest + ((highest - lowest) * step) / STEPS);
  const ends = across.flatMap((thread) =>
    [lowest, highest].map((bearing) => endOf(joint, snug, angleDeg, { thread, bearing })),
  );
  const torquesNm = ends.map((end) => end.torqueNm);
  const preloadsN = ends.map((end) => end.preloadN);
  return {
    lowNm: Math.min(...torquesNm),
    highNm: Math.max(...torquesNm),
    preloadLowN: Math.min(...preloadsN),
    preloadHighN: Math.max(...preloadsN),
    breaks: ends.some(({ breaks }) => breaks),
  };
}

function endOf(joint: TurnedJoint, snug: Snug, angleDeg: number, friction: Friction) {
  const stretch = stretchOf(joint, friction.thread);
  const snugN = 'preloadN' in snug ? snug.preloadN : preloadAtTorqueN(joint, friction, snug.torqueNm);
  const preloadN = preloadAfterTurnN(stretch, joint.geometry.pitchMm, snugN, angleDeg);
  return { preloadN, torqueNm: torqueNm(joint, friction, preloadN), breaks: preloadN >= ultimatePreloadN(stretch) };
}
