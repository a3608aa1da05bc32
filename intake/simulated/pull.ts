import type { Trace } from '@clampwright/core/record';
import { readingOf } from '@clampwright/core/trace';
import { type Chance, chanceFrom } from './chance.ts';
import { damaged } from './damage.ts';
import { type Display, displayAt, sample } from './display.ts';
import type { FastenerState } from './fastener.ts';
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
  readonly trace: Trace;
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
  for (let strokes = 1; !stroke(work) && strokes < MOST_STROKES; strokes++) swingBack(work);
  const { timeS, angleDeg, torqueNm, contact } = display;
  const trace = { timeS, angleDeg, torqueNm };
  const reading = readingOf(trace);
  return {
    trace,
    shownTorqueNm: reading.peakTorqueNm,
    shownAngleDeg: reading.finalAngleDeg,
    fastestDegPerS: reading.fastestDegPerS,
    fastener: { ...fastener, turnedDeg: contact.turnedDeg },
  };
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
  const { model, chance, display } = work;
  const samples = Math.round(model.hand.swingBackS * chance.between(0.7, 1.4) * model.wrench.sampleHz);
  for (let i = 0; i < samples; i++) take(work, atRest(display.contact.turnedDeg));
}

function take({ display, model, sound, chance }: Work, contact: Display['contact']): void {
  sample(display, model.wrench, contact, sound.thresholdNm, chance);
}

/** A careful hand ramps up, and slows to a quarter over the last fifth of the way. */
function speedDegPerS({ intent, display, model }: Work, sinceS: number): number {
  const ramped = intent.speedDegPerS * Math.min(1, sinceS / RAMP_S);
  if (!intent.slowsDown) return ramped;
  const doneTorque =
    intent.stopTorqueNm === undefined ? 0 : feltTorqueNm(model.wrench, display.contact) / intent.stopTorqueNm;
  const doneAngle = intent.stopAngleDeg === undefined ? 0 : display.counted / intent.stopAngleDeg;
  const left = 1 - Math.max(doneTorque, doneAngle);
  return ramped * Math.min(1, Math.max(0.25, left / 0.2));
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
