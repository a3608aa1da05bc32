import {
  andersonDarling,
  type CensoredFit,
  censoredFit,
  controlChart,
  cpkInterval,
  describe,
  indicesOf,
  linearTrend,
  type Observation,
  shapiroWilk,
  trendAt,
} from '@clampwright/core/statistics';
import { check, describeSource, type HowWeHaveIt } from '../check.ts';
import { numberFrom } from '../got.ts';
import { FLOW_RATES, LOTTERY, MAVRO, MICHELSO, WAITING } from '../published/series.ts';

const R: HowWeHaveIt = 'computed with R 4.2.2';
const because = 'the reference stops its search there';

const swinging = (middle: number): readonly number[] => [
  middle + 0.2,
  ...Array.from({ length: 1000 }, (_, i) => middle + (i % 2 === 0 ? 0.1 : 0.3)),
];

/** Values next to a million carry a binary rounding of 1e-10 that the certified figure does not know. */
const ROUNDED = 'the inputs are rounded to binary numbers';

const univariate = (
  name: string,
  values: () => readonly number[],
  mean: string,
  sd: string,
  tolerance?: { readonly relative: number; readonly because: string },
) => [
  check(`${name}: mean`, () => describe(values()).mean, { value: mean, unit: '' }),
  check(
    `${name}: standard deviation`,
    () => describe(values()).standardDeviation ?? 0,
    tolerance ? { value: sd, unit: '', ...tolerance } : { value: sd, unit: '' },
  ),
];

const chart = () => controlChart(FLOW_RATES);

const normality = (name: string, values: readonly number[], statistic: string, p: string) => [
  check(`${name}: W`, () => shapiroWilk(values).statistic, { value: statistic, unit: '' }),
  check(`${name}: p`, () => shapiroWilk(values).p, { value: p, unit: '' }),
];

const midpoints = (count: number, quantile: (share: number) => number) =>
  Array.from({ length: count }, (_, i) => quantile((i + 0.5) / count));

/** Weeks since the last calibration, calibrations, found in. */
const WEEKS = [
  [3, 4, 4],
  [6, 6, 5],
  [9, 14, 9],
  [12, 13, 8],
  [20, 22, 12],
  [27, 49, 20],
  [38.5, 18, 9],
  [49.5, 6, 2],
] as const;

const GROUPED = WEEKS.flatMap(([days, all, inside]) => [
  { days, found: 'in', howMany: inside } as const,
  ...(all > inside ? [{ days, found: 'out', howMany: all - inside } as const] : []),
]);

const grouped: readonly Observation[] = GROUPED.map(({ days, found, howMany: count }) =>
  found === 'in' ? { from: days, to: Infinity, count } : { from: 0, to: days, count },
);

const MIXED: readonly Observation[] = [
  { from: 180, to: Infinity, count: 9 },
  { from: 0, to: 180, count: 1 },
  { from: 365, to: Infinity, count: 14 },
  { from: 0, to: 365, count: 2 },
  { from: 540, to: Infinity, count: 5 },
  { from: 210, to: 540, count: 3 },
];

/** Ovarian cancer trial of J. H. Edmunson and others (1979), as it comes with the survival package: days, died. */
const DIED = [59, 115, 156, 431, 464, 475, 563, 638, 268, 329, 353, 365];
const LIVED = [421, 448, 477, 744, 769, 770, 803, 855, 1040, 1106, 1129, 1206, 1227, 377];
const TRIAL: readonly Observation[] = [
  ...DIED.map((days) => ({ from: days, to: days })),
  ...LIVED.map((days) => ({ from: days, to: Infinity })),
];

function fitted(observations: readonly Observation[], model: 'exponential' | 'weibull'): CensoredFit {
  const fit = censoredFit(observations, model);
  if (!fit) throw new Error('no fit');
  return fit;
}

const fits = (
  name: string,
  observations: readonly Observation[],
  theirs: readonly [string, string, string, string, string],
) => {
  const [scale, logLikelihood, shape, weibullScale, weibullLogLikelihood] = theirs;
  const figure = (value: string) => ({ value, unit: '', relative: 1e-8, because });
  return [
    check(`${name}, exponential: scale`, () => fitted(observations, 'exponential').scale, figure(scale)),
    check(`${name}, exponential: ln L`, () => fitted(observations, 'exponential').logLikelihood, figure(logLikelihood)),
    check(`${name}, Weibull: shape`, () => fitted(observations, 'weibull').shape, figure(shape)),
    check(`${name}, Weibull: scale`, () => fitted(observations, 'weibull').scale, figure(weibullScale)),
    check(`${name}, Weibull: ln L`, () => fitted(observations, 'weibull').logLikelihood, figure(weibullLogLikelihood)),
  ];
};

const DRIFT = [0.3, 0.8, 1.0, 1.6, 2.1].map((y, x) => ({ x, y }));
const WEIGHTED = DRIFT.map((point, i) => ({ ...point, weight: [1, 2, 4, 2, 1][i] }));

function lineOf(points: typeof WEIGHTED | typeof DRIFT) {
  const line = linearTrend(points);
  if (!line) throw new Error('no line');
  return line;
}

const interval = (more: Readonly<Record<string, unknown>>, field: string) => () =>
  numberFrom('calibration-interval', { longestDays: 36_500, shortestDays: 0.1, ...more }, field);

const oneGroup = {
  method: 'reliability',
  history: [
    { days: 12, found: 'in', howMany: 18 },
    { days: 12, found: 'out', howMany: 2 },
  ],
};

export const STATISTICS_SOURCES = [
  describeSource('NIST Statistical Reference Datasets, univariate summary statistics', 'read', [
    ...univariate('Lottery', () => LOTTERY, '518.95871559633', '291.699727470969'),
    ...univariate('Mavro', () => MAVRO, '2.001856', '0.000429123454003053', { relative: 1e-12, because: ROUNDED }),
    ...univariate('Michelso', () => MICHELSO, '299.8524', '0.0790105478190518', { relative: 1e-12, because: ROUNDED }),
    ...univariate('NumAcc2', () => swinging(1), '1.2', '0.1', { relative: 1e-12, because: ROUNDED }),
    ...univariate('NumAcc3', () => swinging(1e6), '1000000.2', '0.1', { relative: 1e-8, because: ROUNDED }),
    ...univariate('NumAcc4', () => swinging(1e7), '10000000.2', '0.1', { relative: 1e-7, because: ROUNDED }),
  ]),
  describeSource('NIST Statistical Reference Datasets, NumAcc1', 'from memory', [
    ...univariate('NumAcc1', () => [10_000_001, 10_000_003, 10_000_002], '10000002', '1'),
  ]),
  describeSource('NIST/SEMATECH e-Handbook, 6.3.2.2, individuals chart', 'read', [
    check('center', () => chart().center, { value: '50.81', unit: '' }),
    check('mean moving range', () => chart().meanMovingRange, { value: '1.8778', unit: '' }),
    check('upper limit', () => chart().upper, { value: '55.8041', unit: '' }),
    check('lower limit', () => chart().lower, { value: '45.8159', unit: '' }),
    check('upper limit of the moving ranges', () => chart().rangeUpper, {
      value: '6.1349',
      unit: '',
      absolute: 0.0003,
      because: 'worked out there from the rounded mean range',
    }),
    check('signals', () => String(chart().signals.length), { value: '0', unit: '' }),
    check('upper limit, by the registry', () => numberFrom('control-chart', { values: FLOW_RATES }, 'upper'), {
      value: '55.8041',
      unit: '',
    }),
  ]),
  describeSource('T. Pyzdek and P. Keller, The Handbook for Quality Management, table 9.4', 'read', [
    check('moving ranges', () => controlChart(WAITING).movingRanges.join(' '), {
      value: '7 6 1 9 5 10 7 3 13 6 6 13 7 2 7 16 6 13 19 1 17 12 5 5',
      unit: '',
    }),
    check('upper limit with 2.66', () => controlChart(WAITING).upper, {
      value: '120.76333',
      unit: '',
      relative: 1e-4,
      because: '2.66 is 3/1.128 rounded',
    }),
  ]),
  describeSource('NIST/SEMATECH e-Handbook, 6.1.6, capability', 'from memory', [
    check('Cp', () => indicesOf({ lower: 8, upper: 20 }, 16, 2).cp ?? 0, { value: '1.0', unit: '' }),
    check('Cpk', () => indicesOf({ lower: 8, upper: 20 }, 16, 2).cpk, { value: '0.6667', unit: '' }),
    check('Cpl', () => indicesOf({ lower: 8, upper: 20 }, 16, 2).cpLower ?? 0, { value: '1.3333', unit: '' }),
  ]),
  describeSource('Documentation of a public quality-control package, piston rings of Montgomery', 'read', [
    check('Cpk, interval of 95 %, low', () => cpkInterval(1.6632, 125, 0.95)[0], { value: '1.448', unit: '' }),
    check('Cpk, interval of 95 %, high', () => cpkInterval(1.6632, 125, 0.95)[1], { value: '1.878', unit: '' }),
  ]),
  describeSource('AIAG & VDA SPC manual, figure 7-6, one limit', 'read', [
    check('Cpk of 0.166, s 0.0457', () => indicesOf({ upper: 0.4 }, 0.166, 0.0457).cpk, { value: '1.71', unit: '' }),
    check('Cpk of 0.25, s 0.0292', () => indicesOf({ upper: 0.4 }, 0.25, 0.0292).cpk, { value: '1.71', unit: '' }),
  ]),
  describeSource('Shapiro-Wilk test, shapiro.test; script in made/statistics.R', R, [
    ...normality('three', [84.6, 86.1, 85.3], '0.998520710059', '0.92652575'),
    ...normality('five', [84.6, 86.1, 85.3, 84.9, 85.8], '0.962297721693', '0.823886362'),
    ...normality('eleven', [148, 154, 158, 160, 161, 162, 166, 170, 182, 195, 236], '0.788814694835', '0.00670381406'),
    ...normality(
      'twenty with one far off',
      [
        84.6, 86.1, 85.3, 84.9, 85.8, 85.1, 86.4, 84.2, 85.5, 85, 85.9, 84.8, 85.2, 86, 84.5, 85.4, 85.7, 84.7, 85.6,
        91.2,
      ],
      '0.633239105435',
      '6.63862611e-6',
    ),
    ...normality(
      'ties',
      [1, 2, 3, 4, 5].flatMap((value) => Array.from({ length: 10 }, () => value)),
      '0.888475626697',
      '0.000204408974',
    ),
    ...normality(
      'exponential',
      midpoints(100, (share) => -Math.log(1 - share)),
      '0.829103920879',
      '2.15604037e-9',
    ),
    ...normality(
      'logistic',
      midpoints(400, (share) => Math.log(share / (1 - share))),
      '0.993712805929',
      '0.0958796996',
    ),
  ]),
  describeSource('Anderson-Darling statistic corrected for size, from anderson()', 'computed with scipy 1.17.1', [
    check('Lottery', () => andersonDarling(LOTTERY).statistic, { value: '2.5827028868', unit: '' }),
    check('Mavro', () => andersonDarling(MAVRO).statistic, { value: '1.6949940859', unit: '' }),
    check('Michelso', () => andersonDarling(MICHELSO).statistic, { value: '0.4643232564', unit: '' }),
  ]),
  describeSource('Censored fits, survreg of survival 3.5-3; script in made/statistics.R', R, [
    ...fits('grouped calibrations', grouped, [
      '34.0444326915488',
      '-87.772085797946',
      '0.663419593685334',
      '40.3308973913811',
      '-86.8590099026967',
    ]),
    ...fits('left, right and interval', MIXED, [
      '1830.25573695003',
      '-16.691010541251',
      '2.29612337046981',
      '767.160088726753',
      '-15.545113869042',
    ]),
    ...fits('exact and right (ovarian)', TRIAL, [
      '1299',
      '-98.0322002000472',
      '1.10805973957364',
      '1225.4189589287',
      '-97.9539010471308',
    ]),
  ]),
  describeSource('NASA RP-1342, calibration intervals, table of grouped results', 'from memory', [
    check(
      'exponential, 70 %',
      interval({ method: 'reliability', wantedShare: 0.7, history: GROUPED }, 'intervalDays'),
      { value: '12.14', unit: 'weeks' },
    ),
    check(
      'Weibull, 70 %',
      interval({ method: 'reliability', model: 'weibull', wantedShare: 0.7, history: GROUPED }, 'intervalDays'),
      { value: '8.53', unit: 'weeks' },
    ),
  ]),
  describeSource('Formulas of the exponential model and the simple response, worked out by hand', 'common practice', [
    check('18 of 20 in after 12', interval(oneGroup, 'intervalDays'), { value: '5.84203', unit: 'months' }),
    check(
      'extended by a tenth',
      interval({ method: 'staircase', history: [{ days: 365, found: 'in' }] }, 'intervalDays'),
      { value: '401.5', unit: 'days' },
    ),
    check(
      'cut for 95 %',
      interval(
        { method: 'staircase', currentIntervalDays: 1000, history: [{ days: 365, found: 'out' }] },
        'intervalDays',
      ),
      { value: '163.508', unit: 'days' },
    ),
    check(
      'cut for 90 %',
      interval(
        { method: 'staircase', wantedShare: 0.9, currentIntervalDays: 1000, history: [{ days: 365, found: 'out' }] },
        'intervalDays',
      ),
      { value: '424.098', unit: 'days' },
    ),
  ]),
  describeSource('Straight line, lm and predict; script in made/statistics.R', R, [
    check('slope', () => lineOf(DRIFT).slope, { value: '0.44', unit: '' }),
    check('its standard error', () => lineOf(DRIFT).slopeStandardError, { value: '0.0346410161513775', unit: '' }),
    check('its p', () => lineOf(DRIFT).slopeP, { value: '0.00105263464548695', unit: '' }),
    check('intercept', () => lineOf(DRIFT).intercept, { value: '0.28', unit: '' }),
    check('its standard error ', () => lineOf(DRIFT).interceptStandardError, { value: '0.0848528137423857', unit: '' }),
    check('residual deviation', () => lineOf(DRIFT).residualSd, { value: '0.109544511501033', unit: '' }),
    check('prediction at 6, low', () => trendAt(lineOf(DRIFT), 6, 0.95).prediction[0], {
      value: '2.3366479564362',
      unit: '',
    }),
    check('prediction at 6, high', () => trendAt(lineOf(DRIFT), 6, 0.95).prediction[1], {
      value: '3.50335204356381',
      unit: '',
    }),
    check('weighted: slope', () => lineOf(WEIGHTED).slope, { value: '0.433333333333333', unit: '' }),
    check('weighted: its error', () => lineOf(WEIGHTED).slopeStandardError, { value: '0.0534027326253241', unit: '' }),
    check('weighted: intercept', () => lineOf(WEIGHTED).intercept, { value: '0.253333333333333', unit: '' }),
    check('weighted: residual', () => lineOf(WEIGHTED).residualSd, { value: '0.184992492340155', unit: '' }),
  ]),
];
