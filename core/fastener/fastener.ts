import { ok, type Result } from '../failure/failure.ts';
import { type Remark, type RemarkCode, remark } from '../language/mechanics/remark.ts';
import { workedOutOf } from './bolt-fault.ts';
import type { ThreadTold } from './own-thread.ts';
import { profileOf, rootDiameterMm } from './profile.ts';
import { type PropertyClass, readPropertyClass } from './property-class.ts';
import { readThread } from './read-thread.ts';
import type { Thread } from './thread.ts';

/** What the standards say of one fastener. */
export interface FastenerData {
  readonly thread: string;
  readonly system: Thread['system'];
  readonly series: Thread['series'];
  readonly majorDiameterMm: number;
  readonly pitchMm: number;
  readonly pitchDiameterMm: number;
  readonly minorDiameterMm: number;
  /** d3 of a metric bolt. */
  readonly rootDiameterMm?: number;
  readonly stressAreaMm2: number;
  readonly propertyClass?: string;
  readonly tensileStrengthMPa?: number;
  readonly yieldStrengthMPa?: number;
  readonly proofStressMPa?: number;
  /** Stress area times stress under proof load. */
  readonly proofLoadN?: number;
  /** Stress area times tensile strength. */
  readonly tensileLoadN?: number;
  /** Which figures of an own bolt were worked out, not given. */
  readonly workedOut?: Remark;
  /** Where the figures go beyond what their standard covers. */
  readonly remarks: readonly Remark[];
}

/**
 * Geometry of a thread and, with a class, strength and loads of its fastener.
 *
 * @param thread        designation or own bolt, as `readThread` takes it
 * @param propertyClass as `readPropertyClass` takes it
 * @returns figures unrounded; ISO 898-1 rounds its areas and loads, so its printed loads differ by up to 0.5 %
 * @source ISO 724:1993, ISO 898-1:2013, ISO 3506-1, ASME B1.1-2003, SAE J429, ASTM F3125, A193, A320, A574
 */
export function fastener(thread: ThreadTold, propertyClass?: string): Result<FastenerData> {
  const read = readThread(thread);
  return read.ok ? fastenerOf(read.value, propertyClass) : read;
}

/** The same of a thread that was read already. */
export function fastenerOf(thread: Thread, propertyClass?: string): Result<FastenerData> {
  if (propertyClass === undefined) return ok(geometry(thread));
  const strength = readPropertyClass(propertyClass, thread);
  return strength.ok ? ok(withStrength(thread, strength.value)) : strength;
}

function geometry(thread: Thread): FastenerData {
  const workedOut = thread.own && workedOutOf(thread.own);
  return {
    thread: thread.designation,
    system: thread.system,
    series: thread.series,
    majorDiameterMm: thread.majorDiameterMm,
    pitchMm: thread.pitchMm,
    ...profileOf(thread),
    ...(thread.system === 'ISO metric' ? { rootDiameterMm: rootDiameterMm(thread) } : {}),
    ...(workedOut === undefined ? {} : { workedOut }),
    remarks: [],
  };
}

function withStrength(thread: Thread, strength: PropertyClass): FastenerData {
  const base = geometry(thread);
  const { proofStressMPa } = strength;
  return {
    ...base,
    propertyClass: strength.name,
    tensileStrengthMPa: strength.tensileStrengthMPa,
    yieldStrengthMPa: strength.yieldStrengthMPa,
    ...(proofStressMPa === undefined ? {} : { proofStressMPa, proofLoadN: base.stressAreaMm2 * proofStressMPa }),
    tensileLoadN: base.stressAreaMm2 * strength.tensileStrengthMPa,
    remarks: beyondStandard(thread, strength),
  };
}

function beyondStandard(thread: Thread, { name, standard }: PropertyClass): readonly Remark[] {
  const covered = COVERED[standard];
  if (covered === undefined || (thread.own === undefined && covered.holds(thread))) return [];
  return [remark(covered.code, { class: name, thread: thread.designation })];
}

interface Covered {
  readonly code: Extract<RemarkCode, `class-${string}`>;
  readonly holds: (thread: Thread) => boolean;
}

/** What a standard covers where its tables of strength alone do not tell. */
const COVERED: Readonly<Partial<Record<PropertyClass['standard'], Covered>>> = {
  // ISO 898-1:2013, clause 1
  'ISO 898-1': {
    code: 'class-iso-898-1',
    holds: ({ majorDiameterMm, series }) => majorDiameterMm <= 39 && (series === 'coarse' || majorDiameterMm >= 8),
  },
  // ISO 3506-1:2009, table 2: above M24 by agreement (from memory)
  'ISO 3506-1': { code: 'class-iso-3506-1', holds: ({ majorDiameterMm }) => majorDiameterMm <= 24 },
  'ASTM F3125': { code: 'class-astm-f3125', holds: ({ series }) => series === 'UNC' },
  'SAE J429': { code: 'class-sae-j429', holds: ({ majorDiameterMm }) => majorDiameterMm >= 6.35 },
};
