import { readFileSync } from 'node:fs';
import { calculate } from '@clampwright/core/calculations';
import {
  describe,
  effectiveDegrees,
  linearTrend,
  propagate,
  studentT,
  type Trend,
  type TrendPoint,
  trendAt,
} from '@clampwright/core/statistics';
import { type Check, check, describeSource } from '../check.ts';
import { got, numberFrom, refusal } from '../got.ts';
import { EXACT_SLOPE_ERRORS, TORQUE_ARM_FITS } from '../published/torque-arm.ts';

type What = (typeof TORQUE_ARM_FITS)[number][0];
type Run = (typeof TORQUE_ARM_FITS)[number][1];

/** The data lie beside the sources; what is built lies one folder deeper. */
const DATA = new URL(import.meta.url.includes('/dist/') ? '../../data/' : '../data/', import.meta.url);

function lineThrough(points: readonly TrendPoint[]): Trend {
  const trend = linearTrend(points);
  if (!trend) throw new Error('no line through fewer than three points');
  return trend;
}

/** r = b·√(Σ(x − x̄)²/Σ(y − ȳ)²) */
function correlationOf(points: readonly TrendPoint[]): number {
  const { slope, spreadX } = lineThrough(points);
  const { standardDeviation = Number.NaN } = describe(points.map(({ y }) => y));
  return (slope * Math.sqrt(spreadX / (points.length - 1))) / standardDeviation;
}

function pointsOf(what: What, run: Run): readonly TrendPoint[] {
  if (run === 'all') return [...pointsOf(what, 'ascending'), ...pointsOf(what, 'descending')];
  const [head = '', ...rows] = readFileSync(new URL(`torque-arm/${what}_${run}.csv`, DATA), 'utf8')
    .trim()
    .split(/\r?\n/);
  const columns = head.split(',');
  const [x, y] = ['mean_volts_per_volt', what === 'torque_arm' ? 'mean_torque' : 'mean_force_newtons'].map((name) =>
    columns.indexOf(name),
  );
  return rows.map((row) => {
    const cells = row.split(',').map(Number);
    return { x: cells[x ?? -1] ?? Number.NaN, y: cells[y ?? -1] ?? Number.NaN };
  });
}

const LAST_DIGITS = 'sixteen digits are printed; two ways of adding up share no more of them';

const fits: readonly Check[] = TORQUE_ARM_FITS.flatMap(([what, run, slope, slopeError, intercept, correlation]) => {
  const fit = () => lineThrough(pointsOf(what, run));
  const name = `${what.replace('_', ' ')}, ${run}`;
  const unit = what === 'torque_arm' ? 'N·m/(V/V)' : 'N/(V/V)';
  return [
    check(`${name}: slope`, () => fit().slope, { value: slope, unit, relative: 2e-15, because: LAST_DIGITS }),
    check(`${name}: intercept`, () => fit().intercept, {
      value: intercept,
      unit: what === 'torque_arm' ? 'N·m' : 'N',
      relative: 1e-12,
      because: `${LAST_DIGITS}, fewer of a small difference`,
    }),
    check(`${name}: correlation`, () => correlationOf(pointsOf(what, run)), {
      value: correlation,
      unit: '',
      relative: 1e-15,
      because: LAST_DIGITS,
    }),
    check(`${name}: standard error of the slope`, () => fit().slopeStandardError, {
      value: slopeError,
      unit,
      relative: 1e-10,
      because: 'the authors’ program takes it from 1 − r², which loses up to six digits; exact below',
    }),
  ];
});

const exactErrors: readonly Check[] = EXACT_SLOPE_ERRORS.map(([what, run, slopeError]) => {
  const fit = TORQUE_ARM_FITS.find((one) => one[0] === what && one[1] === run);
  return check(
    `${what.replace('_', ' ')}, ${run}: standard error of the slope`,
    () => (fit ? lineThrough(pointsOf(fit[0], fit[1])).slopeStandardError : Number.NaN),
    { value: slopeError, unit: '', relative: 1e-13, because: 'rounded once' },
  );
});

/** JCGM 100:2008, H.3, table H.6: temperature °C less 20, correction °C. */
const THERMOMETER = [
  [21.521, -0.171],
  [22.012, -0.169],
  [22.512, -0.166],
  [23.003, -0.159],
  [23.507, -0.164],
  [23.999, -0.165],
  [24.513, -0.156],
  [25.002, -0.157],
  [25.503, -0.159],
  [26.01, -0.161],
  [26.511, -0.16],
].map(([t = 0, b = 0]) => ({ x: t - 20, y: b }));

const thermometer = () => lineThrough(THERMOMETER);

/** JCGM 100:2008, G.4.1: relative uncertainties, percent, from 10, 5 and 15 readings. */
const REDUCED = [0.25, 0.57, 0.82].map((standardUncertainty) => ({ standardUncertainty, sensitivity: 1 }));

const REDUCED_PARTS = [
  { contribution: 0.25, degrees: 9 },
  { contribution: 0.57, degrees: 4 },
  { contribution: 0.82, degrees: 14 },
];

/** JCGM 100:2008, H.1: end gauge, nm. */
const END_GAUGE = [
  { contribution: 25, degrees: 18 },
  { contribution: 9.7, degrees: 25.6 },
  { contribution: 2.9, degrees: 50 },
  { contribution: 16.6, degrees: 2 },
];

const at = (targetNm: number, ...referenceNm: number[]) => ({ targetNm, referenceNm });

const calibrated = (points: readonly unknown[], more: Readonly<Record<string, unknown>> = {}) => ({
  type: 'I',
  class: 'C',
  maxTorqueNm: 200,
  resolutionNm: 0.1,
  points,
  ...more,
});

function deviation(indicatedNm: number, referenceNm: number): number {
  const answer = got(
    calculate(
      'wrench-calibration',
      calibrated([{ ...at(100, referenceNm, referenceNm), indicatedNm: [indicatedNm, indicatedNm] }]),
    ),
  );
  return Number(/"meanDeviationPercent":(-?[\d.e-]+)/.exec(JSON.stringify(answer))?.[1]);
}

const permissible = (type: string, name: string, maxTorqueNm: number): number =>
  numberFrom(
    'wrench-calibration',
    calibrated([at(5, 5, 5)], { type, class: name, maxTorqueNm }),
    'permissibleDeviationPercent',
  );

const LIMITS: readonly (readonly [type: string, name: string, upTo10: string, above: string])[] = [
  ['I', 'A', '6', '6'],
  ['I', 'B', '6', '4'],
  ['I', 'C', '6', '4'],
  ['I', 'D', '6', '6'],
  ['II', 'A', '6', '4'],
  ['II', 'B', '6', '4'],
  ['II', 'C', '6', '4'],
  ['II', 'D', '6', '6'],
  ['II', 'F', '6', '6'],
  ['II', 'G', '6', '6'],
];

const budget = (field: string): number => {
  const answer = got(
    calculate(
      'wrench-calibration',
      calibrated([at(101, 102.1, 101.4, 99.8, 100.6, 101)], {
        resolutionNm: 0.5,
        referenceUncertaintyPercent: 0.5,
        reproducibility: 0.4,
        outputInterface: 0.3,
        driveInterface: 0.2,
        leverVariation: 0.6,
      }),
    ),
  );
  return Number(new RegExp(`"${field}":(-?[\\d.e-]+)`).exec(JSON.stringify(answer))?.[1]);
};

export const CALIBRATION_SOURCES = [
  describeSource('UNH-CORE turbine test bed, torque arm and force cells up and down, January 2015 (MIT)', 'read', fits),
  describeSource('the same data in exact fractions', 'computed with Python fractions', exactErrors),
  describeSource('JCGM 100:2008, H.3, calibration of a thermometer (data read, answers from memory)', 'from memory', [
    check('intercept', () => thermometer().intercept, { value: '-0.1712', unit: '°C' }),
    check('u(intercept)', () => thermometer().interceptStandardError, { value: '0.0029', unit: '°C' }),
    check('slope', () => thermometer().slope, { value: '0.00218', unit: '' }),
    check('u(slope)', () => thermometer().slopeStandardError, { value: '0.00067', unit: '' }),
    check('scatter about the line', () => thermometer().residualSd, {
      value: '0.0035',
      unit: '°C',
    }),
    check('correction at 30 °C', () => thermometer().intercept + 10 * thermometer().slope, {
      value: '-0.1494',
      unit: '°C',
    }),
    check('u(correction at 30 °C)', () => trendAt(thermometer(), 10, 0.95).standardError, {
      value: '0.0041',
      unit: '°C',
    }),
  ]),
  describeSource('JCGM 100:2008, G.4.1, three relative components', 'from memory', [
    check('combined', () => propagate(REDUCED).standardUncertainty, { value: '1.03', unit: '%' }),
  ]),
  describeSource(
    'JCGM 100:2008, G.4.1 and H.1, effective degrees of freedom (H.1 read, G.4.1 from memory)',
    'from memory',
    [
      check('G.4.1: ν_eff', () => effectiveDegrees(REDUCED_PARTS), { value: '19.0', unit: '' }),
      check('G.4.1: U95', () => 1.03 * studentT(19).quantileAbove(0.025), { value: '2.2', unit: '%' }),
      check('H.1: ν_eff, truncated', () => Math.floor(effectiveDegrees(END_GAUGE)), { value: '16', unit: '' }),
      check('H.1: U99', () => 32 * studentT(16).quantileAbove(0.005), { value: '93', unit: 'nm' }),
    ],
  ),
  describeSource('ISO 6789-1:2017, deviation referred to the reference value', 'from memory', [
    check('100 shown, 96 real', () => deviation(100, 96), { value: '4.1667', unit: '%' }),
    check('100 shown, 98.5 real', () => deviation(100, 98.5), { value: '1.5228', unit: '%' }),
    check('100 shown, 104.2 real', () => deviation(100, 104.2), { value: '-4.0307', unit: '%' }),
  ]),
  describeSource(
    'ISO 6789-1:2017, 5.1.5, permissible deviations',
    'from memory',
    LIMITS.flatMap(([type, name, upTo10, above]) => [
      check(`type ${type}, class ${name}, up to 10 N·m`, () => permissible(type, name, 10), {
        value: upTo10,
        unit: '%',
      }),
      check(`type ${type}, class ${name}, above`, () => permissible(type, name, 10.5), { value: above, unit: '%' }),
    ]),
  ),
  describeSource('ISO 6789-2:2017, clause 6, contributions combined as the guide wants', 'computed with Python 3.11', [
    check('W of one point', () => budget('expandedUncertaintyPercent'), { value: '1.06129', unit: '%' }),
    check('standard deviation of the repeats', () => budget('repeatabilityPercent'), { value: '0.85303', unit: '%' }),
  ]),
  describeSource('the trade: a calibration that mixes units or lacks readings is refused', 'common practice', [
    check('lbf·ft beside N·m', () => refusal('wrench-calibration', calibrated([at(100, 73.7, 73.8)])), {
      value: 'refused: points[0].referenceNm',
      unit: '',
    }),
    check('lbf·in beside N·m', () => refusal('wrench-calibration', calibrated([at(100, 885, 886)])), {
      value: 'refused: points[0].referenceNm',
      unit: '',
    }),
    check(
      'class that the type has not',
      () => refusal('wrench-calibration', calibrated([at(100, 100, 100)], { class: 'G' })),
      {
        value: 'refused: class',
        unit: '',
      },
    ),
  ]),
];
