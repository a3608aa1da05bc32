import { type FastenerData, fastener } from '@clampwright/core/fastener';
import { type Check, check, describeSource } from '../check.ts';
import { got } from '../got.ts';
import {
  ISO_724_COARSE,
  ISO_724_FINE,
  M8_PAGE,
  M8_PAGE_STRESS_AREA,
  STRESS_AREAS_COARSE,
  STRESS_AREAS_FINE,
  STRESS_AREAS_LARGE,
  STRESS_AREAS_REMEMBERED,
  TAP_TABLE,
} from '../published/metric-threads.ts';
import { SHIGLEY_AREAS, UNC_AREAS, UNC_PITCH_DIAMETERS, UNF_AREAS } from '../published/unified-threads.ts';

const MM_PER_INCH = 25.4;

type Diameter = 'pitchDiameterMm' | 'minorDiameterMm' | 'rootDiameterMm';

const inMm = (thread: string, label: string, diameter: Diameter, value: string): Check =>
  check(`${thread} ${label}`, () => got(fastener(thread))[diameter] ?? 'not given', { value, unit: 'mm' });

const diameters = ([thread, d2, d1, d3]: readonly [string, string, string, string?]): readonly Check[] => [
  inMm(thread, 'd2', 'pitchDiameterMm', d2),
  inMm(thread, 'd1', 'minorDiameterMm', d1),
  ...(d3 === undefined ? [] : [inMm(thread, 'd3', 'rootDiameterMm', d3)]),
];

const areaMm2 = ([thread, value]: readonly [string, string]): Check =>
  check(`${thread} stress area`, () => got(fastener(thread)).stressAreaMm2, { value, unit: 'mm²', significant: 3 });

const squareInches = ({ stressAreaMm2 }: FastenerData): number => stressAreaMm2 / MM_PER_INCH ** 2;

/** Printed areas that come from diameters rounded to 0.0001 in and so differ in the last place. */
const FROM_ROUNDED_DIAMETERS: Readonly<Record<string, number>> = {
  '#4-40 UNC': 0.00001,
  '#6-40 UNF': 0.00001,
  '#8-36 UNF': 0.00002,
  '1/2-20 UNF': 0.0001,
};

function areaIn2([thread, value]: readonly [string, string]): Check {
  const ours = () => squareInches(got(fastener(thread)));
  const absolute = FROM_ROUNDED_DIAMETERS[thread];
  const because = 'ASME B1.1 works its areas out from a pitch diameter rounded to 0.0001 in';
  const theirs = { value, unit: 'in²' };
  return check(`${thread} stress area`, ours, absolute === undefined ? theirs : { ...theirs, absolute, because });
}

/** 1.16 is 1.1549 rounded twice, by way of 1.155. */
const uncArea = ([thread, printed]: readonly [string, string]): Check =>
  thread === '1 3/8-6 UNC'
    ? check(`${thread} stress area`, () => squareInches(got(fastener(thread))), {
        value: '1.155',
        misprint: printed,
        unit: 'in²',
        because: 'the formula gives 1.1549 and ASME B1.1 prints 1.155 (from memory); 1.16 is that rounded once more',
      })
    : areaIn2([thread, printed]);

export const THREAD_SOURCES = [
  describeSource('ISO 724:1993, basic dimensions of coarse threads', 'from memory', ISO_724_COARSE.flatMap(diameters)),
  describeSource('Basic diameters in a table of tap limits (secondary table)', 'read', TAP_TABLE.flatMap(diameters)),
  describeSource('ISO 724, fine pitches (secondary table)', 'read', [
    ...ISO_724_FINE.flatMap(diameters),
    ...STRESS_AREAS_FINE.map(areaMm2),
  ]),
  describeSource('Data of the M8 thread (secondary table)', 'read', [
    ...M8_PAGE.flatMap(diameters),
    check('M8 stress area', () => got(fastener('M8')).stressAreaMm2, { value: M8_PAGE_STRESS_AREA, unit: 'mm²' }),
  ]),
  describeSource(
    'ISO 898-1, nominal stress areas beside the loads (secondary table)',
    'read',
    STRESS_AREAS_COARSE.map(areaMm2),
  ),
  describeSource('ISO 724, coarse threads above M39 (secondary table)', 'read', STRESS_AREAS_LARGE.map(areaMm2)),
  describeSource('ISO 898-1, stress areas', 'from memory', STRESS_AREAS_REMEMBERED.map(areaMm2)),
  describeSource('Shigley, 9th ed., table 8-2 (ANSI B1.1-1974)', 'read', SHIGLEY_AREAS.map(areaIn2)),
  describeSource('Dimensions of UNF threads (secondary table)', 'read', UNF_AREAS.map(areaIn2)),
  describeSource('Internal UNC threads, class 2B (secondary table)', 'read', UNC_AREAS.map(uncArea)),
  describeSource(
    'UNC basic pitch diameters (secondary table)',
    'read',
    UNC_PITCH_DIAMETERS.map(([thread, value]) =>
      check(`${thread} d2`, () => got(fastener(thread)).pitchDiameterMm / MM_PER_INCH, { value, unit: 'in' }),
    ),
  ),
];
