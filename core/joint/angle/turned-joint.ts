import { type Friction, type ThreadAndBearing, torqueArms } from '../torque/thread-and-bearing.ts';
import { preloadForTorque, torqueForPreload } from '../torque/torque-for-preload.ts';
import type { BoltLaw, Strength } from './bolt-law.ts';
import { preloadAtTravelN, type Stretch, travelMm, travelOfTurnMm, twistOf } from './stretch.ts';

/** A joint as it is turned: what stretches, and what rubs. */
export interface TurnedJoint {
  readonly geometry: ThreadAndBearing;
  readonly prevailingNm: number;
  readonly elasticMmPerN: number;
  readonly sections: readonly { readonly lengthMm: number; readonly areaMm2: number }[];
  readonly strength?: Strength | undefined;
  readonly law?: BoltLaw | undefined;
}

/** Thread torque over preload, mm. */
export function threadArmMm(geometry: ThreadAndBearing, thread: number): number {
  const { pitchMm, threadMm } = torqueArms(geometry, { thread, bearing: 0 });
  return pitchMm + threadMm;
}

export const torqueNm = ({ geometry, prevailingNm }: TurnedJoint, friction: Friction, preloadN: number): number =>
  torqueForPreload(preloadN, geometry, friction).torqueNm + prevailingNm;

/** Nothing below the prevailing torque. */
export const preloadAtTorqueN = (
  { geometry, prevailingNm }: TurnedJoint,
  friction: Friction,
  torqueNm: number,
): number => preloadForTorque(Math.max(0, torqueNm - prevailingNm), geometry, friction);

/** How it stretches while it is twisted by thread friction; untwisted where none is known. */
export function stretchOf(joint: TurnedJoint, threadFriction: number | undefined): Stretch {
  const armMm = threadFriction === undefined ? 0 : threadArmMm(joint.geometry, threadFriction);
  const sections = joint.sections.map(({ lengthMm, areaMm2 }) => ({
    lengthMm,
    areaMm2,
    twist: twistOf(Math.sqrt((4 * areaMm2) / Math.PI), armMm),
  }));
  return { elasticMmPerN: joint.elasticMmPerN, sections, strength: joint.strength, law: joint.law };
}

/** Preload after a turn from snug; at most the one that breaks the bolt. */
export const preloadAfterTurnN = (stretch: Stretch, pitchMm: number, snugN: number, angleDeg: number): number =>
  preloadAtTravelN(stretch, travelMm(stretch, snugN) + travelOfTurnMm(angleDeg, pitchMm));
