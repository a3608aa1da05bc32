import { type FastenerData, fastener } from '@clampwright/core/fastener';
import { convert } from '@clampwright/core/quantity';
import { type Check, check, describeSource } from '../check.ts';
import { got } from '../got.ts';
import { PROOF_LOADS, TENSILE_LOADS } from '../published/iso-898-1-loads.ts';
import { CLASSES_READ, CLASSES_REMEMBERED, GRADES, GRADES_REMEMBERED } from '../published/strength.ts';

/** The standard multiplies areas of three figures by the stress and rounds again to three: at worst 0.62 %, M6 5.8. */
const ROUNDED_TWICE = {
  relative: 0.0065,
  because: 'ISO 898-1 rounds the area and then the load, each to three figures',
};

type Load = 'proofLoadN' | 'tensileLoadN';

const loads =
  (load: Load, label: string) =>
  ([thread, byClass]: readonly [string, Readonly<Record<string, string>>]): readonly Check[] =>
    Object.entries(byClass).map(([name, value]) =>
      check(`${thread} ${name} ${label}`, () => got(fastener(thread, name))[load] ?? 'not given', {
        value,
        unit: 'N',
        ...ROUNDED_TWICE,
      }),
    );

type Strength = readonly [name: string, thread: string, proof: string, yieldStress: string, tensile: string];

const STRESSES = ['proofStressMPa', 'yieldStrengthMPa', 'tensileStrengthMPa'] as const;

function strengths(unit: 'MPa' | 'ksi'): (row: Strength) => readonly Check[] {
  const inUnit = (stressMPa: number | undefined) =>
    stressMPa === undefined ? 'not given' : got(convert(stressMPa, 'MPa', unit));
  const one = (name: string, thread: string, stress: (typeof STRESSES)[number], value: string) =>
    check(`${name} at ${thread}: ${stress.replace('MPa', '')}`, () => inUnit(got(fastener(thread, name))[stress]), {
      value,
      unit,
      absolute: 0,
      because: 'a figure that the standard sets',
    });
  return ([name, thread, ...values]) => STRESSES.map((stress, index) => one(name, thread, stress, values[index] ?? ''));
}

const poundsForce = ({ proofLoadN = Number.NaN }: FastenerData): number => got(convert(proofLoadN, 'N', 'lbf'));

export const STRENGTH_SOURCES = [
  describeSource(
    'ISO 898-1, proof loads, coarse threads (secondary table)',
    'read',
    PROOF_LOADS.flatMap(loads('proofLoadN', 'proof load')),
  ),
  describeSource(
    'ISO 898-1, minimum ultimate tensile loads, coarse threads (secondary table)',
    'read',
    TENSILE_LOADS.flatMap(loads('tensileLoadN', 'tensile load')),
  ),
  describeSource('ISO 898-1, property classes (secondary table)', 'read', CLASSES_READ.flatMap(strengths('MPa'))),
  describeSource('ISO 898-1, property classes', 'from memory', CLASSES_REMEMBERED.flatMap(strengths('MPa'))),
  describeSource('SAE J429, grades seldom met', 'from memory', GRADES_REMEMBERED.flatMap(strengths('ksi'))),
  describeSource(
    'SAE J429, after Shigley and Mischke, 5th ed. (secondary table)',
    'read',
    GRADES.flatMap(strengths('ksi')),
  ),
  describeSource('Naval Ships’ Technical Manual, chapter 075, worked proof load', 'read', [
    check('1/4-20 UNC grade 8 proof load', () => poundsForce(got(fastener('1/4-20 UNC', 'grade 8'))), {
      value: '3816',
      unit: 'lbf',
      absolute: 6,
      because: 'worked with an area of 0.0318 in², which may be 0.00005 in² off: 6 lbf at 120 ksi',
    }),
  ]),
];
