import { adapterSchema, calibrationSummarySchema, extensionSchema, wrenchSchema } from '@clampwright/core/wrench';
import { describe, expect, it } from 'vitest';
import { blankCalibration, readCalibration } from './calibration-form.ts';
import { BLANK_ADAPTER, BLANK_EXTENSION, readAdapter, readExtension } from './turning-form.ts';
import { BLANK_WRENCH, readWrench } from './wrench-form.ts';

const ID = '01920000-0000-7000-8000-000000000001';

const TODAY = '2026-03-01';

const CLICK = {
  ...BLANK_WRENCH,
  name: 'Long one',
  serial: 'A 12',
  type: 'II',
  class: 'A',
  lowest: '60',
  highest: '300',
  resolution: '1',
  lever: '500',
} as const;

describe('a wrench', () => {
  it('is read into what the toolbox keeps', () => {
    const { value, faults } = readWrench(CLICK, ID, 'en', TODAY);
    expect(faults).toEqual([]);
    expect(wrenchSchema.parse(value)).toMatchObject({ lowestNm: 60, highestNm: 300, connection: { kind: 'typed' } });
  });

  // 1 lbf·ft = 1.3558179483314004 N·m: NIST SP 811:2008, appendix B.8; 1 in = 25.4 mm
  it('is converted from the units of its plate', () => {
    const { value } = readWrench(
      { ...CLICK, unit: 'lbf·ft', lowest: '50', lever: '20', lengthUnit: 'in' },
      ID,
      'en',
      TODAY,
    );
    expect(value?.lowestNm).toBeCloseTo(67.79089741657, 9);
    expect(value?.leverMm).toBeCloseTo(508, 9);
  });

  it('is refused with its range upside down, beside the upper end', () => {
    const { value, faults } = readWrench({ ...CLICK, lowest: '400' }, ID, 'en', TODAY);
    expect(value).toBeUndefined();
    expect(faults).toEqual([{ field: 'highestNm', finding: { kind: 'lower-above-upper' } }]);
  });

  it('names every empty field at once', () => {
    const fields = readWrench(BLANK_WRENCH, ID, 'en', TODAY).faults.map((fault) => fault.field);
    expect(fields.toSorted()).toEqual(['class', 'highestNm', 'leverMm', 'lowestNm', 'name', 'resolutionNm', 'serial']);
  });

  it('is refused in a class that its type has not (ISO 6789-1:2017, clause 4), beside the class', () => {
    expect(readWrench({ ...CLICK, class: 'g' }, ID, 'en', TODAY).value?.class).toBe('G');
    const { value, faults } = readWrench({ ...CLICK, type: 'I', class: 'G' }, ID, 'en', TODAY);
    expect(value).toBeUndefined();
    expect(faults.map(({ field }) => field)).toEqual(['class']);
  });

  it('needs the port of a serial connection', () => {
    const { faults } = readWrench({ ...CLICK, connection: 'serial' }, ID, 'en', TODAY);
    expect(faults.map((fault) => fault.field)).toEqual(['connection.path']);
  });
});

it('keeps both directions, the drive and the date of make', () => {
  const { value } = readWrench({ ...CLICK, directions: 'both', drive: '20', madeOn: '2024-05-06' }, ID, 'en', TODAY);
  expect(wrenchSchema.parse(value)).toMatchObject({
    directions: ['clockwise', 'anticlockwise'],
    driveMm: 20,
    madeOn: '2024-05-06',
  });
});

it('refuses a wrench that is still to be made, at the date', () => {
  const { faults } = readWrench({ ...CLICK, madeOn: '2026-03-02' }, ID, 'en', TODAY);
  expect(faults).toEqual([{ field: 'madeOn', finding: { kind: 'to-come' } }]);
});

it('keeps how well lengths and stiffness are known', () => {
  const adapter = { ...BLANK_ADAPTER, name: 'Offset', length: '60', lengthUncertainty: '0,2' };
  expect(readAdapter(adapter, ID, 'de').value).toMatchObject({ lengthStandardUncertaintyMm: 0.2 });
  const bar = { ...BLANK_EXTENSION, name: 'Bar', length: '250', stiffness: '40', stiffnessUncertainty: '5' };
  expect(extensionSchema.parse(readExtension(bar, ID, 'en').value)).toMatchObject({
    stiffnessStandardUncertaintyPercent: 5,
  });
});

it('wants the stiffness whose uncertainty is told, and no uncertainty above the whole', () => {
  const bar = { ...BLANK_EXTENSION, name: 'Bar', length: '250', stiffnessUncertainty: '120' };
  expect(readExtension(bar, ID, 'en').faults.map(({ field }) => field)).toEqual([
    'stiffnessNmPerDeg',
    'stiffnessStandardUncertaintyPercent',
  ]);
});

it('reads an adapter in the decimals of the language', () => {
  const { value } = readAdapter({ ...BLANK_ADAPTER, name: 'Offset', length: '62,5', angle: '90' }, ID, 'de');
  expect(adapterSchema.parse(value)).toMatchObject({ lengthMm: 62.5, angleDeg: 90 });
});

it('refuses an adapter angle beyond half a turn', () => {
  const { faults } = readAdapter({ ...BLANK_ADAPTER, name: 'Offset', length: '60', angle: '181' }, ID, 'en');
  expect(faults).toEqual([{ field: 'angleDeg', finding: { kind: 'between', from: 0, to: 180 } }]);
});

it('keeps an extension of unknown stiffness without one', () => {
  const { value } = readExtension({ ...BLANK_EXTENSION, name: 'Bar', length: '250' }, ID, 'en');
  expect(extensionSchema.parse(value)).not.toHaveProperty('stiffnessNmPerDeg');
});

describe('a calibration', () => {
  const blank = blankCalibration('2024-02-29');

  it('is due a year later, on a day that exists', () => {
    expect([blank.calibratedOn, blank.dueOn]).toEqual(['2024-02-29', '2025-02-28']);
  });

  it('is read into the summary', () => {
    const form = { ...blank, certificate: 'K 4711', by: 'Works laboratory', deviation: '2,1', uncertainty: '0,8' };
    const { value } = readCalibration(form, 'fr');
    expect(calibrationSummarySchema.parse(value)).toMatchObject({
      maximumDeviationPercent: 2.1,
      expandedUncertaintyPercent: 0.8,
    });
  });

  it('is refused when it is due before it was done', () => {
    const form = { ...blank, dueOn: '2024-01-01', certificate: 'K', by: 'L', deviation: '1', uncertainty: '1' };
    expect(readCalibration(form, 'en').faults).toEqual([{ field: 'dueOn', finding: { kind: 'due-before' } }]);
  });
});
