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
      return crossed(fastener, sound, chance.between(0.8, 1.1));
    case 'already-tight':
      return { ...fastener, turnedDeg: angleAtTorque(joint, fastener, sound.torqueNm * chance.between(0.92, 1.05)) };
    case 'stripped-thread':
      return { ...fastener, shearPreloadN: chance.between(0.35, 0.6) * clampedN(joint, fastener, sound) };
    case 'yielded':
      return { ...fastener, yieldPreloadN: chance.between(0.5, 0.7) * clampedN(joint, fastener, sound) };
    case 'none':
    case 'pulled-too-fast':
    case 'stopped-short':
    case 'over-run':
      return fastener;
  }
}

const clampedN = (joint: JointModel, fastener: FastenerState, sound: Outlook): number =>
  (sound.torqueNm - joint.prevailingNm) / torquePerPreloadM(joint, fastener.threadFriction, fastener.bearingFriction);

/** Binding alone brings this share of the torque well before a sound fastener would be tight. */
function crossed(fastener: FastenerState, sound: Outlook, share: number): FastenerState {
  const wayDeg = Math.max(10, 0.6 * (sound.turnedDeg - fastener.turnedDeg));
  return { ...fastener, bindingFromDeg: fastener.turnedDeg, bindingNmPerDeg: (share * sound.torqueNm) / wayDeg };
}
