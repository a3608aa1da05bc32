import { fastener } from '@clampwright/core/fastener';
import { en1090PreloadN, rcscPretensionN } from '@clampwright/core/joint';
import { convert } from '@clampwright/core/quantity';
import { type Check, check, describeSource } from '../check.ts';
import { got } from '../got.ts';
import { AISC_INCH, AISC_METRIC, EN_8_8, EN_10_9, F3125_INCH } from '../published/structural-preload.ts';

const areaMm2 = (thread: string): number => got(fastener(thread)).stressAreaMm2;

/** The codes work with areas of three figures and round halves up; A490M of M20 comes from 0.7 × 255 kN. */
const ROUNDED = { absolute: 0.8, because: 'worked with areas or loads of three figures, halves rounded up' } as const;

const european =
  (propertyClass: string) =>
  ([thread, value]: readonly [string, string]): Check =>
    check(`${thread} ${propertyClass}`, () => (en1090PreloadN(propertyClass, areaMm2(thread)) ?? Number.NaN) / 1000, {
      value,
      unit: 'kN',
      ...ROUNDED,
    });

const kips = (thread: string, tensileKsi: number): number =>
  got(convert(rcscPretensionN(got(convert(tensileKsi, 'ksi', 'MPa')), areaMm2(thread)), 'N', 'lbf')) / 1000;

const inch = (thread: string, grade: string, tensileKsi: number, value: string): Check =>
  check(`${thread} ${grade}`, () => kips(thread, tensileKsi), {
    value,
    unit: 'kip',
    absolute: 0.55,
    because: 'worked with areas of three figures',
  });

/** A325 before F3125: weaker above 1 in. */
const a325Ksi = (thread: string): number => (areaMm2(thread) > areaMm2('1-8 UNC') ? 105 : 120);

const metric = (thread: string, grade: string, tensileMPa: number, value: string): Check =>
  check(`${thread} ${grade}`, () => rcscPretensionN(tensileMPa, areaMm2(thread)) / 1000, {
    value,
    unit: 'kN',
    ...ROUNDED,
  });

export const STRUCTURAL_PRELOAD_SOURCES = [
  describeSource('EN 1090-2, F_p,C of 10.9 (secondary table)', 'read', EN_10_9.map(european('10.9'))),
  describeSource('EN 1090-2, F_p,C of 8.8', 'from memory', EN_8_8.map(european('8.8'))),
  describeSource(
    'AISC 360-05, table J3.1',
    'read',
    AISC_INCH.flatMap(([thread, a325, a490]) => [
      inch(thread, 'A325', a325Ksi(thread), a325),
      inch(thread, 'A490', 150, a490),
    ]),
  ),
  describeSource(
    'AISC 360-05, table J3.1M',
    'read',
    AISC_METRIC.flatMap(([thread, a325, a490]) => [
      metric(thread, 'A325M', 830, a325),
      metric(thread, 'A490M', 1040, a490),
    ]),
  ),
  describeSource(
    'AISC, pretension of A325 by F3125',
    'from memory',
    F3125_INCH.map(([thread, value]) => inch(thread, 'A325', 120, value)),
  ),
];
