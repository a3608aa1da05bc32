import { chanceFrom } from './chance.ts';
import type { JointModel } from './model.ts';
import { carriedPreloadN, torquePerPreloadM } from './preload.ts';

/** One very fastener: its own friction and damage, and how far it has been turned. */
export interface FastenerState {
  /** Turned since the parts touched; negative while it still runs free, degrees. */
  readonly turnedDeg: number;
  readonly threadFriction: number;
  readonly bearingFriction: number;
  readonly yieldPreloadN: number;
  /** Preload at which its thread shears; absent: it holds. */
  readonly shearPreloadN: number | undefined;
  /** A thread that does not run in its own track binds more the further it is turned, N·m a degree. */
  readonly bindingNmPerDeg: number;
  readonly bindingFromDeg: number;
  /** Turning at which it stands on the ground of its hole; absent: it never does. */
  readonly bottomFromDeg: number | undefined;
  /** Stiffness of what it clamps over that of the joint: below 1 where a washer is missing or a part is soft. */
  readonly stiffnessRatio: number;
  /** Friction that rises and falls as it turns, a share of the torque, and over how many degrees. */
  readonly roughness: number;
  readonly roughnessDeg: number;
}

/** A fastener as it was turned in by hand, not yet tight. The seed is its own: the same one is the same fastener. */
export function looseFastener(joint: JointModel, seed: number): FastenerState {
  const chance = chanceFrom(seed);
  const { threadFriction: thread, bearingFriction: bearing } = joint;
  return {
    threadFriction: chance.normal(thread.mean, thread.mean * thread.relativeDeviation),
    bearingFriction: chance.normal(bearing.mean, bearing.mean * bearing.relativeDeviation),
    turnedDeg: -joint.freeRunDeg * chance.between(0.5, 1.5),
    yieldPreloadN: joint.yieldPreloadN,
    shearPreloadN: undefined,
    bindingNmPerDeg: 0,
    bindingFromDeg: 0,
    bottomFromDeg: undefined,
    stiffnessRatio: 1,
    roughness: 0,
    roughnessDeg: 4,
  };
}

/** The same fastener after it was tightened to a torque at the fastener, N·m. */
export function tightenedFastener(joint: JointModel, seed: number, torqueNm: number): FastenerState {
  const loose = looseFastener(joint, seed);
  return { ...loose, turnedDeg: Math.max(loose.turnedDeg, angleAtTorque(joint, loose, torqueNm)) };
}

/** Torque that keeps the fastener turning when it has been turned so far, N·m. */
export function torqueInMotionNm(joint: JointModel, fastener: FastenerState, turnedDeg: number): number {
  const bindingNm = fastener.bindingNmPerDeg * Math.max(0, turnedDeg - fastener.bindingFromDeg);
  const leverM = torquePerPreloadM(joint, fastener.threadFriction, fastener.bearingFriction);
  const smoothNm = joint.prevailingNm + bindingNm + leverM * carriedPreloadN(joint, fastener, turnedDeg);
  if (fastener.roughness === 0) return smoothNm;
  return smoothNm * (1 + fastener.roughness * Math.sin((2 * Math.PI * turnedDeg) / fastener.roughnessDeg));
}

const FURTHEST_DEG = 10_000;

/** Turning at which a torque is reached, degrees from first contact; by bisection, as the curve rises. */
export function angleAtTorque(joint: JointModel, fastener: FastenerState, torqueNm: number): number {
  let lowDeg = 0;
  let highDeg = 1;
  while (torqueInMotionNm(joint, fastener, highDeg) < torqueNm && highDeg < FURTHEST_DEG) highDeg *= 2;
  for (let i = 0; i < 50; i++) {
    const middleDeg = (lowDeg + highDeg) / 2;
    if (torqueInMotionNm(joint, fastener, middleDeg) < torqueNm) lowDeg = middleDeg;
    else highDeg = middleDeg;
  }
  return highDeg;
}
