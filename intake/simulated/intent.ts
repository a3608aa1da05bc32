import type { Chance } from './chance.ts';
import { angleAtTorque, type FastenerState, torqueInMotionNm } from './fastener.ts';
import type { Fault } from './fault.ts';
import type { Aim, SimulatedModel } from './model.ts';

/** How a sound pull would end. */
export interface Outlook {
  readonly thresholdNm: number;
  /** At the fastener. */
  readonly torqueNm: number;
  readonly turnedDeg: number;
}

/** What the hand is up to in this pull. */
export interface Intent {
  /** The hand stops when the wrench shows this torque, or has counted this angle. */
  readonly stopTorqueNm: number | undefined;
  readonly stopAngleDeg: number | undefined;
  readonly speedDegPerS: number;
  /** A careful hand slows down towards the end. */
  readonly slowsDown: boolean;
  /** Share of the way at which the hand jerks, or the socket slips. */
  readonly jerksAt: number | undefined;
  readonly slipsAt: number | undefined;
  /** Waits so long and pulls once more, s. */
  readonly againAfterS: number | undefined;
}

/** Where a sound fastener would end with this aim, from where it stands now. */
export function outlook({ joint, wrench }: SimulatedModel, fastener: FastenerState, aim: Aim): Outlook {
  const thresholdNm = aim.angleFromNm ?? wrench.angleFromNm;
  if (aim.angleDeg !== undefined) {
    const countsFromDeg = angleAtTorque(joint, fastener, thresholdNm * wrench.fastenerOverShown);
    const turnedDeg = Math.max(fastener.turnedDeg, countsFromDeg) + aim.angleDeg;
    return { thresholdNm, turnedDeg, torqueNm: torqueInMotionNm(joint, fastener, turnedDeg) };
  }
  // The type of an aim leaves no other case than a torque here.
  const torqueNm = (aim.torqueNm ?? 0) * wrench.fastenerOverShown;
  return { thresholdNm, torqueNm, turnedDeg: Math.max(fastener.turnedDeg, angleAtTorque(joint, fastener, torqueNm)) };
}

const MISSED: Partial<Record<Fault, readonly [number, number]>> = {
  'stopped-short': [0.7, 0.85],
  'over-run': [1.2, 1.35],
};
const DEFAULT_SPEED_LIMIT_DEG_PER_S = 90;

/** Draws what this hand will do: where it will stop, how fast it turns. */
export function intend({ hand }: SimulatedModel, aim: Aim, fault: Fault, chance: Chance): Intent {
  const missed = MISSED[fault];
  const share = missed ? chance.between(...missed) : 1;
  const limitDegPerS = aim.speedLimitDegPerS ?? DEFAULT_SPEED_LIMIT_DEG_PER_S;
  const tooFast = fault === 'pulled-too-fast';
  const ownDegPerS = Math.min(
    chance.normal(hand.speedDegPerS, hand.speedDegPerS * hand.relativeSpeedDeviation),
    0.6 * limitDegPerS,
  );
  const torqueNm = aim.angleDeg === undefined ? aim.torqueNm : undefined;
  return {
    stopTorqueNm:
      torqueNm === undefined ? undefined : torqueNm * share * chance.normal(1, hand.relativeTorqueDeviation),
    stopAngleDeg:
      aim.angleDeg === undefined ? undefined : aim.angleDeg * share + chance.normal(0, hand.angleDeviationDeg),
    speedDegPerS: tooFast ? limitDegPerS * chance.between(1.8, 2.4) : ownDegPerS,
    slowsDown: !tooFast,
    jerksAt: fault === 'jerked' ? chance.between(0.35, 0.6) : undefined,
    slipsAt: fault === 'slipped-socket' ? chance.between(0.4, 0.8) : undefined,
    againAfterS: fault === 'two-pulls' ? chance.between(2.2, 4) : undefined,
  };
}
