import type { OwnBolt, OwnRow } from '@clampwright/core/fastener';
import { checkJoint } from '@clampwright/core/joint';
import type { Wrench } from '@clampwright/core/wrench';
import { describe, expect, it } from 'vitest';
import { BLANK_JOINT } from '../form/blank.ts';
import { formOf } from '../form/from-content.ts';
import type { JointForm } from '../form/joint-form.ts';
import { readJoint } from '../form/read.ts';
import { blankDerive, type DeriveForm, deriveChoices, readDerive } from './derive-form.ts';
import { filledIn } from './fill.ts';

const kept = { by: { id: '01991f3c-0000-7000-8000-000000000009', name: 'Lead' }, addedAt: '2026-03-02T06:00:00.000Z' };
const paste: OwnRow = {
  id: '01991f3c-0000-7000-8000-000000000001',
  kind: 'lubricant',
  name: 'Assembly paste',
  source: 'Own test, 12 bolts M12',
  threadFriction: { lower: 0.1, upper: 0.12 },
  bearingFriction: { lower: 0.09, upper: 0.12 },
  ...kept,
};
const stud: OwnRow = {
  id: '01991f3c-0000-7000-8000-000000000002',
  kind: 'material',
  name: 'Stud of lot 7',
  source: 'Certificate of lot 7',
  yieldStrengthMPa: 700,
  tensileStrengthMPa: 860,
  ...kept,
};
const rod: OwnBolt = {
  id: '01991f3c-0000-7000-8000-000000000005',
  kind: 'bolt',
  name: 'Tie rod 23',
  source: 'Drawing KH-114, measured on 4 rods',
  system: 'ISO metric',
  majorDiameterMm: 23,
  pitchMm: 2,
  bearingOuterMm: 34,
  holeMm: 25,
  ...kept,
};
const wrench: Wrench = {
  id: '01991f3c-0000-7000-8000-000000000003',
  name: 'Bench wrench',
  serial: 'KH-1',
  type: 'I',
  class: 'C',
  lowestNm: 20,
  highestNm: 200,
  resolutionNm: 0.1,
  leverMm: 400,
  connection: { kind: 'typed' },
  calibration: {
    calibratedOn: '2026-01-10',
    dueOn: '2027-01-10',
    certificate: 'C-1',
    by: 'bench',
    maximumDeviationPercent: 1.2,
    expandedUncertaintyPercent: 0.8,
  },
};

const joint: JointForm = {
  ...BLANK_JOINT,
  name: 'Cap',
  fastener: { ...BLANK_JOINT.fastener, thread: 'M12', propertyClass: '8.8' },
  layout: { ...BLANK_JOINT.layout, diameter: '200' },
};
const wrenches = [wrench, { ...wrench, id: 'uncalibrated', calibration: undefined }];
const choices = deriveChoices([paste, stud, rod], wrenches, joint.fastener);
const citing = { friction: (_: unknown, typed: string) => `friction ${typed}`, method: () => 'method' };
const typed: DeriveForm = {
  ...blankDerive(joint, 'en'),
  threadFriction: '0.12',
  bearingFriction: '0.12',
  frictionSource: 'data sheet',
  plusMinusPercent: '5',
};
const read = (part: Partial<DeriveForm>) => readDerive({ ...typed, ...part }, choices, 'N·m', 'en', citing);

describe('the form of a derivation', () => {
  it('presumes neither friction nor window', () => {
    const { faults } = readDerive(blankDerive(joint, 'en'), choices, 'N·m', 'en', citing);
    expect(faults.map(({ field }) => field)).toEqual([
      'plusMinusPercent',
      'threadFriction',
      'bearingFriction',
      'frictionSource',
    ]);
  });

  it('works out the target of what was typed, and cites its sources', () => {
    expect(read({}).derived).toMatchObject({
      target: 83.4,
      derivation: { sources: ['friction data sheet', 'method'] },
    });
  });

  it('reckons with the least friction of an own lubricant, and copies its row', () => {
    const { input, ownRows } = read({ friction: paste.id }).derived!.derivation;
    expect(input).toMatchObject({ threadFriction: 0.1, bearingFriction: 0.09 });
    expect(ownRows).toEqual([paste]);
  });

  it('takes an own material in place of the class', () => {
    const { input, ownRows } = read({ strength: stud.id, propertyClass: '' }).derived!.derivation;
    expect(input.yieldStrengthMPa).toBe(700);
    expect(ownRows).toEqual([stud]);
  });

  it('takes an own bolt in place of a thread of the tables', () => {
    const { input, ownRows } = read({ bolt: rod.id, thread: '' }).derived!.derivation;
    expect(input.thread).toBe('Tie rod 23');
    expect(ownRows).toEqual([rod]);
  });

  it('says where head or hole of an own bolt are missing', () => {
    const { bearingOuterMm: _, holeMm: __, ...bare } = rod;
    const some = deriveChoices([bare], [], joint.fastener);
    const { faults } = readDerive({ ...typed, bolt: bare.id }, some, 'N·m', 'en', citing);
    expect(faults).toEqual([{ field: 'thread', finding: { kind: 'mend', word: 'no-face' } }]);
  });

  it('still offers what the joint was written with after it was superseded', () => {
    const newer: OwnBolt = { ...rod, id: '01991f3c-0000-7000-8000-000000000006', pitchMm: 1.5, supersedes: rod.id };
    const offered = (ownBolt?: OwnBolt) => deriveChoices([rod, newer], [], { ...joint.fastener, ownBolt }).bolts;
    expect(offered()).toEqual([newer]);
    expect(offered(rod)).toEqual([newer, rod]);
  });

  it('takes the window from the own scatter of a calibrated wrench', () => {
    expect(choices.wrenches).toEqual([wrench]);
    expect(read({ windowBy: wrench.id, plusMinusPercent: '' }).plusMinusPercent).toBe(2);
  });

  it.each([
    [{ threadFriction: '0' }, 'threadFriction'],
    [{ bearingFriction: '1.2' }, 'bearingFriction'],
    [{ thread: 'M12.5' }, 'thread'],
    [{ propertyClass: '8.9' }, 'propertyClass'],
    [{ utilizationPercent: '110' }, 'utilization'],
    [{ tighteningFactor: '0.9' }, 'tighteningFactor'],
  ])('tells at the field what cannot be: %j', (wrong, field) => {
    const { derived, faults } = read(wrong);
    expect([derived, faults.map((fault) => fault.field)]).toEqual([undefined, [field]]);
  });
});

describe('a derived target filled in', () => {
  const derived = read({}).derived!;
  const filled = filledIn(joint, 0, { derived, plusMinusPercent: 5, sourceText: 'Worked out here' }, 'de');
  const reading = readJoint(filled, 'de');

  it('makes a joint that may be released and keeps its derivation', () => {
    expect(reading.faults).toEqual([]);
    expect(reading.content?.numbersSource).toEqual({
      kind: 'derived',
      text: 'Worked out here',
      derivation: derived.derivation,
    });
    expect(checkJoint(reading.content!)).toEqual([]);
  });

  it('stands in the window as it was worked out, in the decimals on screen', () => {
    expect(filled.stages[0]?.torque).toMatchObject({ form: 'percent', target: '83,4', percent: '5', unit: 'N·m' });
    expect(reading.stages[0]?.torque?.upperNm).toBeCloseTo(derived.derivation.filled.upperNm, 9);
    expect(reading.warnings).toEqual([]);
  });

  it('puts own rows into the joint as they stand, where they are checked and warned by', () => {
    const own = read({ bolt: rod.id, strength: stud.id, propertyClass: '' }).derived!;
    const withOwn = filledIn(joint, 0, { derived: own, plusMinusPercent: 5, sourceText: 'Worked out' }, 'en');
    const { content, warnings } = readJoint(withOwn, 'en');
    expect(content?.fastener).toMatchObject({ thread: 'Tie rod 23', ownBolt: rod, ownMaterial: stud });
    expect(content?.fastener).not.toHaveProperty('propertyClass');
    expect([checkJoint(content!), warnings]).toEqual([[], []]);
    expect(formOf(content!, 'en').fastener).toEqual(withOwn.fastener);
  });

  it('goes when the source becomes the maker’s', () => {
    const makers = { ...filled, numbersSource: { ...filled.numbersSource, kind: 'maker' as const } };
    expect(readJoint(makers, 'de').content?.numbersSource).toEqual({ kind: 'maker', text: 'Worked out here' });
  });
});
