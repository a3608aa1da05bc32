import type { Chance } from './chance.ts';
import { angleAtTorque, type FastenerState } from './fastener.ts';
import type { Fault } from './fault.ts';
import type { Outlook } from './intent.ts';
import type { JointModel } from './model.ts';
import { torquePerPreloadM } from './preload.ts';

/** The fastener as a fault leaves it for this pull; faults of the hand do not touch it. */
export function damaged(
  joint: JointModel,
  fastener: FastenerState,
  fault: Fault,
  sound: Outlook,
  chance: Chance,
): FastenerState {
  switch (fault) {
    case 'crossed-thread':
      return crossed(fastener, sound, chance);
    case 'already-tight':
      return { ...fastener, turnedDeg: angleAtTorque(joint, fastener, sound.torqueNm * chance.between(0.92, 1.05)) };
    case 'stripped-thread':
      return { ...fastener, shearPreloadN: chance.between(0.35, 0.6) * clampedN(joint, fastener, sound) };
    case 'yielded':
      return { ...fastener, yieldPreloadN: chance.between(0.5, 0.7) * clampedN(joint, fastener, sound) };
    case 'bottomed':
      return { ...fastener, bottomFromDeg: onTheWayDeg(fastener, sound, chance.between(0.3, 0.5)) };
    case 'too-soft':
      return { ...fastener, stiffnessRatio: chance.between(0.45, 0.6) };
    case 'stick-slip':
      return { ...fastener, roughness: chance.between(0.05, 0.08), roughnessDeg: chance.between(2.5, 5) };
    case 'none':
    case 'jerked':
    case 'slipped-socket':
    case 'two-pulls':
    case 'turned-loose':
    case 'pulled-too-fast':
    case 'stopped-short':
    case 'over-run':
      return fastener;
  }
}

/** Turning at which a share of what is left of the way is done, reckoned from where the parts meet. */
function onTheWayDeg({ turnedDeg }: FastenerState, sound: Outlook, share: number): number {
  const fromDeg = Math.max(0, turnedDeg);
  return fromDeg + share * (sound.turnedDeg - fromDeg);
}

const clampedN = (joint: JointModel, fastener: FastenerState, sound: Outlook): number =>
  (sound.torqueNm - joint.prevailingNm) / torquePerPreloadM(joint, fastener.threadFriction, fastener.bearingFriction);

/** It cannot be turned in by hand, so turns are left; binding, rough, brings the torque before the parts meet. */
function crossed(fastener: FastenerState, sound: Outlook, chance: Chance): FastenerState {
  const turnedDeg = Math.min(fastener.turnedDeg, 0) - chance.between(300, 600);
  return {
    ...fastener,
    turnedDeg,
    bindingFromDeg: turnedDeg,
    bindingNmPerDeg: (chance.between(1.05, 1.3) * sound.torqueNm) / -turnedDeg,
    roughness: chance.between(0.04, 0.08),
    roughnessDeg: chance.between(15, 40),
  };
}
