import type { Trace } from '@clampwright/core/record';
import { readingOf } from '@clampwright/core/trace';
import { type Chance, chanceFrom } from './chance.ts';
import { damaged } from './damage.ts';
import { type Display, displayAt, sample } from './display.ts';
import { type FastenerState, torqueInMotionNm } from './fastener.ts';
import type { Fault } from './fault.ts';
import { type Intent, intend, type Outlook, outlook } from './intent.ts';
import { atRest, letGo, stiffnessNmPerDeg, turnHandle } from './mechanics.ts';
import { feltTorqueNm } from './meter.ts';
import type { Aim, SimulatedModel } from './model.ts';

export interface PullTask {
  readonly model: SimulatedModel;
  /** As the wrench must show it. */
  readonly aim: Aim;
  readonly fault: Fault;
  /** Decides the hand and the noise; the fastener brings its own chance with it. */
  readonly seed: number;
  readonly fastener: FastenerState;
}

export interface SimulatedPull {
  /** Angle counts from where the pull began; what is shown counts from the threshold torque. */
  readonly trace: Trace;
  /** What the display showed of the angle while the pull went on. */
  readonly countedDeg: readonly number[];
  readonly shownTorqueNm: number;
  readonly shownAngleDeg: number;
  readonly fastestDegPerS: number;
  /** The fastener afterwards: what the next pull on it begins with. */
  readonly fastener: FastenerState;
}

interface Work {
  readonly model: SimulatedModel;
  readonly fastener: FastenerState;
  readonly sound: Outlook;
  readonly intent: Intent;
  readonly chance: Chance;
  readonly springNmPerDeg: number;
  readonly display: Display;
}

/**
 * One pull of the simulated wrench: in ratchet strokes until the hand has what it aims at, or gives up.
 *
 * @returns samples as the wrench shows them (noise, steps of the display, angle from its threshold torque) and the reading of them
 */
export function simulatePull({ model, aim, fault, seed, fastener: before }: PullTask): SimulatedPull {
  const chance = chanceFrom(seed);
  const sound = outlook(model, before, aim);
  const fastener = damaged(model.joint, before, fault, sound, chance);
  const intent = intend(model, aim, fault, chance);
  const display = displayAt(model.wrench, atRest(fastener.turnedDeg), chance);
  const work: Work = {
    model,
    fastener,
    sound,
    intent,
    chance,
    springNmPerDeg: stiffnessNmPerDeg(model.wrench),
    display,
  };
  if (fault === 'turned-loose') turnLoose(work);
  else pullOn(work);
  const { timeS, angleDeg, torqueNm, countedDeg, contact } = display;
  const reading = readingOf({ timeS, angleDeg: countedDeg, torqueNm });
  return {
    trace: { timeS, angleDeg, torqueNm },
    countedDeg,
    shownTorqueNm: fault === 'turned-loose' ? Math.min(...torqueNm) : reading.peakTorqueNm,
    shownAngleDeg: reading.finalAngleDeg,
    fastestDegPerS: reading.fastestDegPerS,
    fastener: { ...fastener, turnedDeg: contact.turnedDeg },
  };
}

function pullOn(work: Work): void {
  for (let strokes = 1; !stroke(work) && strokes < MOST_STROKES; strokes++) swingBack(work);
  const { againAfterS } = work.intent;
  if (againAfterS === undefined) return;
  rest(work, againAfterS);
  const { stopAngleDeg } = work.intent;
  const intent = stopAngleDeg === undefined ? work.intent : { ...work.intent, stopAngleDeg: work.display.counted + 2 };
  stroke({ ...work, intent });
}

/** Ends a pull that can come to nothing, such as with a spring too soft to reach the torque in a stroke. */
const MOST_STROKES = 60;
const RAMP_S = 0.15;
const RELEASE_S = 0.2;

/** One stroke of the ratchet and its release tail. @returns whether the pull is over */
function stroke(work: Work): boolean {
  const { model, display, chance, springNmPerDeg } = work;
  const lengthDeg = model.hand.strokeDeg * chance.between(0.8, 1.1);
  const fromDeg = display.contact.handleDeg;
  const stepS = 1 / model.wrench.sampleHz;
  let over = false;
  for (let step = 1; !over && display.contact.handleDeg - fromDeg < lengthDeg; step++) {
    const byDeg = speedDegPerS(work, step * stepS) * stepS;
    take(work, turnHandle(model.joint, work.fastener, springNmPerDeg, display.contact, byDeg));
    slipIfItMust(work);
    over = arrived(work) || givesUp(work);
  }
  const heldNm = display.contact.torqueNm;
  const samples = Math.max(2, Math.round(RELEASE_S * model.wrench.sampleHz));
  for (let left = samples - 1; left >= 0; left--) {
    take(work, letGo(springNmPerDeg, display.contact, heldNm * (left / samples) ** 2));
  }
  return over;
}

/** The ratchet goes back over a fastener that stands: torque about nothing, no angle. */
function swingBack(work: Work): void {
  rest(work, work.model.hand.swingBackS * work.chance.between(0.7, 1.4));
}

function rest(work: Work, seconds: number): void {
  const { turnedDeg, slippedDeg } = work.display.contact;
  const samples = Math.round(seconds * work.model.wrench.sampleHz);
  for (let i = 0; i < samples; i++) take(work, atRest(turnedDeg, slippedDeg));
}

const SLIP_SAMPLES = 5;

/** The socket jumps over the fastener: torque goes at once, the handle runs on. */
function slipIfItMust(work: Work): void {
  const { intent, display, chance } = work;
  if (intent.slipsAt === undefined || display.contact.slippedDeg > 0 || done(work) < intent.slipsAt) return;
  const wayDeg = chance.between(15, 45);
  for (let i = 1; i <= SLIP_SAMPLES; i++) take(work, atRest(display.contact.turnedDeg, (wayDeg * i) / SLIP_SAMPLES));
}

/** Turned the wrong way: the spring winds up backwards, and the fastener breaks away if it was tight. */
function turnLoose(work: Work): void {
  const { model, fastener, display } = work;
  const { turnedDeg } = display.contact;
  const breakNm = LOOSENS_AT * Math.max(torqueInMotionNm(model.joint, fastener, turnedDeg), 0.1 * work.sound.torqueNm);
  const samples = Math.round(LOOSEN_S * model.wrench.sampleHz);
  for (let i = 1; i <= samples; i++) {
    const torqueNm = -breakNm * (i <= samples / 2 ? (2 * i) / samples : 0.1);
    const back = i <= samples / 2 ? 0 : (i - samples / 2) * LOOSEN_STEP_DEG;
    take(work, { ...atRest(turnedDeg - back), torqueNm });
  }
}

/** Torque that breaks a fastener away over the one that tightened it (common practice: 0.7 to 0.9). */
const LOOSENS_AT = 0.8;
const LOOSEN_S = 2;
const LOOSEN_STEP_DEG = 0.3;

function take({ display, model, sound, chance }: Work, contact: Display['contact']): void {
  sample(display, model.wrench, contact, sound.thresholdNm, chance);
}

/** A careful hand ramps up, and slows to a quarter over the last fifth of the way. */
function speedDegPerS(work: Work, sinceS: number): number {
  const { intent } = work;
  const ramped = intent.speedDegPerS * Math.min(1, sinceS / RAMP_S);
  if (!intent.slowsDown) return ramped;
  const share = done(work);
  if (intent.jerksAt !== undefined && share >= intent.jerksAt && share < intent.jerksAt + JERK_WAY)
    return JERK_DEG_PER_S;
  return ramped * Math.min(1, Math.max(0.25, (1 - share) / 0.2));
}

const JERK_WAY = 0.25;
const JERK_DEG_PER_S = 140;

/** How much of the way to the aim is done, 0 to 1. */
function done({ intent, display, model }: Work): number {
  const doneTorque =
    intent.stopTorqueNm === undefined ? 0 : feltTorqueNm(model.wrench, display.contact) / intent.stopTorqueNm;
  const doneAngle = intent.stopAngleDeg === undefined ? 0 : display.counted / intent.stopAngleDeg;
  return Math.max(doneTorque, doneAngle);
}

function arrived({ intent, display, model }: Work): boolean {
  if (intent.stopAngleDeg !== undefined) return display.counted >= intent.stopAngleDeg;
  return intent.stopTorqueNm !== undefined && feltTorqueNm(model.wrench, display.contact) >= intent.stopTorqueNm;
}

/** It turns and turns without getting tighter, or it gets far tighter than it should. */
function givesUp({ sound, display }: Work): boolean {
  const { turnedDeg, torqueNm } = display.contact;
  return turnedDeg > Math.max(0, sound.turnedDeg) + 120 || torqueNm > 1.5 * sound.torqueNm;
}
