import type { Chance } from './chance.ts';
import type { Contact } from './mechanics.ts';
import { countedDeg, feltTorqueNm, inSteps, sampledTorqueNm, visibleDeg } from './meter.ts';
import type { WrenchModel } from './model.ts';

/** The wrench's display while a pull goes on, and the samples it has given so far. */
export interface Display {
  readonly timeS: number[];
  readonly angleDeg: number[];
  readonly torqueNm: number[];
  /** What the display shows meanwhile: angle from the threshold torque, in steps, degrees. */
  readonly countedDeg: number[];
  /** Where the pull began, degrees. */
  readonly startDeg: number;
  /** Counted since the torque first passed the threshold, before it is cut to steps, degrees. */
  counted: number;
  contact: Contact;
}

/** A display at zero with its first sample. */
export function displayAt(wrench: WrenchModel, contact: Contact, chance: Chance): Display {
  const torqueNm = sampledTorqueNm(wrench, feltTorqueNm(wrench, contact), chance);
  const startDeg = visibleDeg(wrench, contact);
  return { timeS: [0], angleDeg: [0], torqueNm: [torqueNm], countedDeg: [0], startDeg, counted: 0, contact };
}

/** Takes the next sample, one sample time later. */
export function sample(
  display: Display,
  wrench: WrenchModel,
  contact: Contact,
  thresholdNm: number,
  chance: Chance,
): void {
  display.counted += countedDeg(wrench, display.contact, contact, thresholdNm);
  display.contact = contact;
  display.timeS.push(Number((display.timeS.length / wrench.sampleHz).toFixed(6)));
  display.angleDeg.push(inSteps(visibleDeg(wrench, contact) - display.startDeg, wrench.angleResolutionDeg));
  display.countedDeg.push(inSteps(display.counted, wrench.angleResolutionDeg));
  display.torqueNm.push(sampledTorqueNm(wrench, feltTorqueNm(wrench, contact), chance));
}
