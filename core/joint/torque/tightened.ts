import { invalid, ok, type Result } from '../../failure/failure.ts';
import {
  type BearingStandard,
  bearingOuterMm,
  clearanceHoleMm,
  type HoleSeries,
  usualBearing,
} from '../../fastener/bearing-face.ts';
import { type FastenerData, fastenerOf } from '../../fastener/fastener.ts';
import type { ThreadTold } from '../../fastener/own-thread.ts';
import { readThread } from '../../fastener/read-thread.ts';
import type { Thread } from '../../fastener/thread.ts';
import type { ThreadAndBearing } from './thread-and-bearing.ts';

/** What is told of a fastener that is tightened; what is left out is taken from the standards. */
export interface TightenedInput {
  readonly thread: ThreadTold;
  readonly propertyClass?: string | undefined;
  /** 0.2 % proof stress in place of the class's yield strength. */
  readonly proofStressMPa?: number | undefined;
  readonly head?: BearingStandard | undefined;
  readonly bearingOuterMm?: number | undefined;
  readonly holeSeries?: HoleSeries | undefined;
  readonly holeMm?: number | undefined;
  readonly shankDiameterMm?: number | undefined;
}

/** A fastener ready to be reckoned with. */
export interface Tightened {
  readonly data: FastenerData;
  readonly geometry: ThreadAndBearing;
  /** Standard of the head when its bearing face was taken from there. */
  readonly head?: BearingStandard;
  /** Undefined without class and proof stress. */
  readonly yieldMPa?: number;
}

/**
 * Looks up what was left out and refuses what cannot be.
 *
 * @source ISO 4014 head and medium hole of ISO 273 unless told otherwise; an own bolt's figures go before those
 */
export function tightened(input: TightenedInput): Result<Tightened> {
  const thread = readThread(input.thread);
  if (!thread.ok) return thread;
  const read = fastenerOf(thread.value, input.propertyClass);
  if (!read.ok) return read;
  const ring = ringOf(input, thread.value, read.value.propertyClass);
  if (!ring.ok) return ring;
  const { majorDiameterMm, pitchMm, pitchDiameterMm } = read.value;
  const { head, ...outer } = ring.value;
  const yieldMPa = input.proofStressMPa ?? read.value.yieldStrengthMPa;
  return ok({
    data: read.value,
    geometry: {
      majorDiameterMm,
      pitchMm,
      pitchDiameterMm,
      sectionDiameterMm: sectionDiameterMm(read.value, input.shankDiameterMm ?? thread.value.own?.shankDiameterMm),
      ...outer,
    },
    ...(head === undefined ? {} : { head }),
    ...(yieldMPa === undefined ? {} : { yieldMPa }),
  });
}

interface Ring {
  readonly head?: BearingStandard;
  readonly bearingOuterMm: number;
  readonly holeMm: number;
}

function ringOf(input: TightenedInput, thread: Thread, className: string | undefined): Result<Ring> {
  const standard = input.head ?? usualBearing(thread, className);
  const toldMm = input.bearingOuterMm ?? (input.head === undefined ? thread.own?.bearingOuterMm : undefined);
  const outerMm = toldMm ?? bearingOuterMm(standard, thread);
  if (outerMm === undefined) {
    const message = `${standard} has no head or nut for ${thread.designation} here.`;
    return invalid('bearingOuterMm', message, 'the outer diameter of the bearing face, mm');
  }
  const ownHoleMm = input.holeSeries === undefined ? thread.own?.holeMm : undefined;
  const holeMm = input.holeMm ?? ownHoleMm ?? clearanceHoleMm(thread, input.holeSeries);
  if (holeMm === undefined) {
    return invalid('holeMm', `No hole is known here for ${thread.designation}.`, 'the diameter of the hole, mm');
  }
  if (holeMm < thread.majorDiameterMm) {
    const message = `A hole of ${holeMm} mm does not let ${thread.designation} through.`;
    return invalid('holeMm', message, `at least ${thread.majorDiameterMm} mm`);
  }
  if (outerMm <= holeMm) {
    const message = `A bearing circle of ${outerMm} mm lies inside the hole of ${holeMm} mm.`;
    return invalid('bearingOuterMm', message, `more than ${holeMm} mm`);
  }
  return ok({
    ...(toldMm === undefined ? { head: standard } : {}),
    bearingOuterMm: outerMm,
    holeMm,
  });
}

/** The thinner of the stress area and a waisted shank is twisted and stretched most. */
function sectionDiameterMm({ stressAreaMm2 }: FastenerData, shankDiameterMm = Infinity): number {
  return Math.min(Math.sqrt((4 * stressAreaMm2) / Math.PI), shankDiameterMm);
}
