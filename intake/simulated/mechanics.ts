import { type FastenerState, torqueInMotionNm } from './fastener.ts';
import type { JointModel, WrenchModel } from './model.ts';

/** Where hand and fastener are. The wrench between them is a torsion spring. */
export interface Contact {
  /** Turned by the hand, on the fastener's scale, degrees. */
  readonly handleDeg: number;
  /** Turned by the fastener, degrees. */
  readonly turnedDeg: number;
  /** Torque at the fastener, N·m. */
  readonly torqueNm: number;
  /** A fastener at rest wants its break-away torque before it moves. */
  readonly moving: boolean;
  /** The socket has turned so far over the fastener, degrees. */
  readonly slippedDeg: number;
}

/** Wrench and extension are springs in series, N·m a degree. */
export function stiffnessNmPerDeg(wrench: WrenchModel): number {
  const { stiffnessNmPerDeg: own, extensionStiffnessNmPerDeg: extension } = wrench;
  return extension === undefined ? own : 1 / (1 / own + 1 / extension);
}

export const atRest = (turnedDeg: number, slippedDeg = 0): Contact => ({
  handleDeg: turnedDeg,
  turnedDeg,
  torqueNm: 0,
  moving: false,
  slippedDeg,
});

/** The hand turns on: the spring winds up until the fastener breaks away, then both move. */
export function turnHandle(
  joint: JointModel,
  fastener: FastenerState,
  springNmPerDeg: number,
  contact: Contact,
  byDeg: number,
): Contact {
  const handleDeg = contact.handleDeg + byDeg;
  const windUpNm = springNmPerDeg * (handleDeg - contact.turnedDeg);
  const inMotionNm = torqueInMotionNm(joint, fastener, contact.turnedDeg);
  const holdsNm = contact.moving ? inMotionNm : joint.breakAwayRatio * inMotionNm;
  if (windUpNm <= holdsNm) return { ...contact, handleDeg, torqueNm: windUpNm };
  const turnedDeg = balance(joint, fastener, springNmPerDeg, contact.turnedDeg, handleDeg);
  return { ...contact, handleDeg, turnedDeg, torqueNm: springNmPerDeg * (handleDeg - turnedDeg), moving: true };
}

/** The hand lets go to a share of the torque: the spring turns back, the self-locking thread stands. */
export function letGo(springNmPerDeg: number, contact: Contact, torqueNm: number): Contact {
  return { ...contact, handleDeg: contact.turnedDeg + torqueNm / springNmPerDeg, torqueNm, moving: false };
}

/** Angle between `lowDeg` and the handle at which the spring's torque is what the fastener wants. */
function balance(
  joint: JointModel,
  fastener: FastenerState,
  springNmPerDeg: number,
  lowDeg: number,
  handleDeg: number,
) {
  let low = lowDeg;
  let high = handleDeg;
  for (let i = 0; i < 40; i++) {
    const middle = (low + high) / 2;
    if (springNmPerDeg * (handleDeg - middle) > torqueInMotionNm(joint, fastener, middle)) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
