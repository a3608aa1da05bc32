import { type Remark, remark } from '../language/mechanics/remark.ts';
import { showNumber } from '../quantity/show-number.ts';
import type { BoltDimensions, OwnThread } from './own-thread.ts';

type Figure = Exclude<keyof BoltDimensions, 'system'>;

/** One figure that cannot be beside another. */
export interface BoltFault {
  readonly field: Figure;
  readonly must: 'less than' | 'at most' | 'more than' | 'at least';
  readonly limit: number;
  /** The figure that sets the limit; `core` where the thread would leave none. */
  readonly than: Figure | 'core';
}

/** d3 = d − 17/24·√3·P of the basic profile must leave something. */
const CORE_PER_PITCH = (17 / 24) * Math.sqrt(3);
/** Stress areas are printed to three digits; one of d3 alone may be rounded below it. */
const AREA_ROUNDING = 0.99;
const circleMm2 = (diameterMm: number): number => (Math.PI / 4) * diameterMm ** 2;

type Rule = readonly [Figure, BoltFault['must'], limit: number | undefined, than: BoltFault['than']];

/** @returns the first figure that cannot be; undefined for a bolt that can */
export function boltFault(bolt: BoltDimensions): BoltFault | undefined {
  const { majorDiameterMm, pitchMm, holeMm, minorDiameterMm } = bolt;
  const heightMm = (pitchMm * Math.sqrt(3)) / 2;
  const pitchDiameterMm = bolt.pitchDiameterMm ?? majorDiameterMm - (3 * heightMm) / 4;
  const minorMm = minorDiameterMm ?? majorDiameterMm - (5 * heightMm) / 4;
  const rootMm = bolt.rootDiameterMm ?? minorMm - heightMm / 6;
  const rules: readonly Rule[] = [
    ['pitchMm', 'less than', majorDiameterMm / CORE_PER_PITCH, 'core'],
    ['pitchDiameterMm', 'less than', majorDiameterMm, 'majorDiameterMm'],
    ['minorDiameterMm', 'less than', majorDiameterMm, 'majorDiameterMm'],
    ['minorDiameterMm', 'less than', pitchDiameterMm, 'pitchDiameterMm'],
    ['pitchDiameterMm', 'more than', minorMm, 'minorDiameterMm'],
    ['rootDiameterMm', 'at most', minorMm, 'minorDiameterMm'],
    ['stressAreaMm2', 'less than', circleMm2(majorDiameterMm), 'majorDiameterMm'],
    ['stressAreaMm2', 'at least', AREA_ROUNDING * circleMm2(rootMm), 'rootDiameterMm'],
    ['holeMm', 'at least', majorDiameterMm, 'majorDiameterMm'],
    ['bearingOuterMm', 'more than', holeMm, 'holeMm'],
    ['bearingOuterMm', 'more than', majorDiameterMm, 'majorDiameterMm'],
    ['shankDiameterMm', 'at most', holeMm, 'holeMm'],
  ];
  const broken = rules.find(([field, must, limit]) => !holds(bolt[field], must, limit));
  if (broken?.[2] === undefined) return undefined;
  const [field, must, limit, than] = broken;
  return { field, must, limit, than };
}

function holds(value: number | undefined, must: BoltFault['must'], limit: number | undefined): boolean {
  if (value === undefined || limit === undefined) return true;
  switch (must) {
    case 'less than':
      return value < limit;
    case 'at most':
      return value <= limit;
    case 'more than':
      return value > limit;
    case 'at least':
      return value >= limit;
  }
}

const NAMES: Readonly<Record<Figure, string>> = {
  majorDiameterMm: 'nominal diameter',
  pitchMm: 'pitch',
  pitchDiameterMm: 'pitch diameter',
  minorDiameterMm: 'minor diameter',
  rootDiameterMm: 'root diameter',
  stressAreaMm2: 'stress area',
  bearingOuterMm: 'bearing face',
  holeMm: 'hole',
  shankDiameterMm: 'shank',
};

const figure = (value: number): string => showNumber(Number(value.toPrecision(4)), 'en');

/** A fault in words: what is wrong, and what the field wants. */
export function boltFaultInWords(
  { majorDiameterMm, ...bolt }: BoltDimensions,
  { field, must, limit, than }: BoltFault,
) {
  const unit = field === 'stressAreaMm2' ? 'mm²' : 'mm';
  const value = field === 'majorDiameterMm' ? majorDiameterMm : (bolt[field] ?? 0);
  const what = `A ${NAMES[field]} of ${figure(value)} ${unit}`;
  const expected = `${must} ${figure(limit)} ${unit}`;
  if (than === 'core')
    return { message: `${what} leaves no core of a bolt of ${figure(majorDiameterMm)} mm.`, expected };
  const setBy = field === 'stressAreaMm2' ? `what the ${NAMES[than]} encloses` : `the ${NAMES[than]}`;
  return { message: `${what} is not ${must} ${setBy}, ${figure(limit)} ${unit}.`, expected };
}

/** What of an own bolt was worked out, in words; undefined where all of it was given. */
export function workedOutOf(own: OwnThread): Remark | undefined {
  const derived = (['pitchDiameterMm', 'minorDiameterMm', 'rootDiameterMm', 'stressAreaMm2'] as const)
    .filter((field) => own[field] === undefined && (field !== 'rootDiameterMm' || own.system === 'ISO metric'))
    .map((field) => NAMES[field]);
  if (derived.length === 0) return undefined;
  const standard = own.system === 'ISO metric' ? 'ISO 68-1, ISO 898-1' : 'ASME B1.1';
  return remark('bolt-worked-out', { bolt: own.designation, worked: derived.join(', '), standard });
}
