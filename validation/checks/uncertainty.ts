import {
  type Distribution,
  describe,
  type Model,
  monteCarlo,
  propagate,
  type Uncertain,
} from '@clampwright/core/statistics';
import { type Check, check, describeSource } from '../check.ts';

const DRAWS = 4_000_000;
const SEED = 1;

/** Four standard deviations of an end of so many draws, and the half unit of the print. */
const DRAWN_ENDS = { relative: 0.004, because: 'drawn: the ends scatter by 0.06 %' };

const quantity = (value: number, standardUncertainty: number, distribution: Distribution): Uncertain => ({
  value,
  standardUncertainty,
  distribution,
});

/** Drawn once, however many of its figures are checked. */
function drawnOnce(quantities: readonly Uncertain[], model: Model) {
  let result: ReturnType<typeof monteCarlo> | undefined;
  return () => (result ??= monteCarlo({ quantities, model, draws: DRAWS, seed: SEED }));
}

const sum: Model = (columns, results, from, count) => {
  for (let i = 0; i < count; i++) {
    let total = 0;
    for (const column of columns) total += column[i] ?? 0;
    results[from + i] = total;
  }
};

function additive(
  label: string,
  uncertainties: readonly number[],
  distribution: Distribution,
  printed: readonly [u: string, end: string, byLaw: string],
): readonly Check[] {
  const quantities = uncertainties.map((u) => quantity(0, u, distribution));
  const drawn = drawnOnce(quantities, sum);
  const law = () => propagate(quantities.map((one) => ({ ...one, sensitivity: 1 }))).standardUncertainty;
  const [u, end, byLaw] = printed;
  return [
    check(`${label}: u by drawing`, () => drawn().standardUncertainty, { value: u, unit: '' }),
    check(`${label}: lower end by drawing`, () => -drawn().interval95[0], { value: end, unit: '', ...DRAWN_ENDS }),
    check(`${label}: upper end by drawing`, () => drawn().interval95[1], { value: end, unit: '', ...DRAWN_ENDS }),
    check(`${label}: upper end by the law of propagation`, () => 1.959963984540054 * law(), { value: byLaw, unit: '' }),
  ];
}

/** δm = (m_R + δm_R)·(1 + (ρ_a − ρ_a0)·(1/ρ_W − 1/ρ_R)) − m_nom, mg and kg/m³. */
const massModel: Model = ([mass, small, air, weight, reference], results, from, count) => {
  for (let i = 0; i < count; i++) {
    const buoyancy = 1 + ((air?.[i] ?? 0) - 1.2) * (1 / (weight?.[i] ?? 1) - 1 / (reference?.[i] ?? 1));
    results[from + i] = ((mass?.[i] ?? 0) + (small?.[i] ?? 0)) * buoyancy - 100_000;
  }
};

const mass = drawnOnce(
  [
    quantity(100_000, 0.05, 'normal'),
    quantity(1.234, 0.02, 'normal'),
    quantity(1.2, 0.1 / Math.sqrt(3), 'rectangular'),
    quantity(8000, 1000 / Math.sqrt(3), 'rectangular'),
    quantity(8000, 50 / Math.sqrt(3), 'rectangular'),
  ],
  massModel,
);

/** δY = X1² + X2², in units of 10⁻⁶; u(X1) = u(X2) = 0.005. */
const lossModel: Model = ([x1, x2], results, from, count) => {
  for (let i = 0; i < count; i++) results[from + i] = 1e6 * ((x1?.[i] ?? 0) ** 2 + (x2?.[i] ?? 0) ** 2);
};

function loss(x1: number, printed: readonly [mean: string, u: string, low: string, high: string]): readonly Check[] {
  const drawn = drawnOnce([quantity(x1, 0.005, 'normal'), quantity(0, 0.005, 'normal')], lossModel);
  const [mean, u, low, high] = printed;
  const unit = '10⁻⁶';
  const because = 'the guide’s own draws scatter in the last figure';
  return [
    check(`x1 ${x1}: estimate`, () => drawn().mean, { value: mean, unit, absolute: 1.5, because }),
    check(`x1 ${x1}: u`, () => drawn().standardUncertainty, { value: u, unit, absolute: 1, because }),
    check(`x1 ${x1}: shortest interval, low`, () => drawn().shortest95[0], { value: low, unit, absolute: 5, because }),
    check(`x1 ${x1}: shortest interval, high`, () => drawn().shortest95[1], {
      value: high,
      unit,
      absolute: 5,
      because,
    }),
  ];
}

/** GUM H.1: what each quantity has of the uncertainty of the end gauge, nm. */
const endGauge = () =>
  propagate([25, 9.7, 2.9, 16.6].map((standardUncertainty) => ({ standardUncertainty, sensitivity: 1 })))
    .standardUncertainty;

/** GUM H.2, table H.2: five readings of voltage V, current A and phase rad, taken together. From memory; the means agree. */
const READINGS = [
  [5.007, 4.994, 5.005, 4.99, 4.999],
  [0.019663, 0.019639, 0.01964, 0.019685, 0.019678],
  [1.0456, 1.0438, 1.0468, 1.0428, 1.0433],
] as const;

const deviations = (values: readonly number[]) => values.map((value) => value - describe(values).mean);

const correlation = (a: readonly number[], b: readonly number[]): number => {
  const [da, db] = [deviations(a), deviations(b)];
  const product = (x: readonly number[], y: readonly number[]) =>
    x.reduce((sum, value, i) => sum + value * (y[i] ?? 0), 0);
  return product(da, db) / Math.sqrt(product(da, da) * product(db, db));
};

const [VOLTS, AMPERES, PHASES] = READINGS;
const voltage = describe(VOLTS).mean;
const current = describe(AMPERES).mean;
const phase = describe(PHASES).mean;
const ratio = voltage / current;
const { sin, cos } = Math;

function impedance(sensitivities: readonly number[]): number {
  const quantities = READINGS.map((values, index) => ({
    standardUncertainty: (describe(values).standardDeviation ?? 0) / Math.sqrt(values.length),
    sensitivity: sensitivities[index] ?? 0,
  }));
  return propagate(quantities, [
    [0, 1, correlation(VOLTS, AMPERES)],
    [0, 2, correlation(VOLTS, PHASES)],
    [1, 2, correlation(AMPERES, PHASES)],
  ]).standardUncertainty;
}

export const UNCERTAINTY_SOURCES = [
  describeSource('JCGM 101:2008, 9.2, sums of four quantities', 'from memory', [
    ...additive('four normal', [1, 1, 1, 1], 'normal', ['2.00', '3.92', '3.92']),
    ...additive('four rectangular', [1, 1, 1, 1], 'rectangular', ['2.00', '3.88', '3.92']),
    ...additive('one ten times as wide', [1, 1, 1, 10], 'rectangular', ['10.1', '17.0', '19.9']),
  ]),
  describeSource('JCGM 101:2008, 9.3, mass calibration', 'from memory', [
    check('estimate', () => mass().mean, { value: '1.2340', unit: 'mg', absolute: 0.0002, because: 'drawn' }),
    check('u by drawing', () => mass().standardUncertainty, {
      value: '0.0754',
      unit: 'mg',
      absolute: 0.0002,
      because: 'drawn; worked out it is 0.07548',
    }),
    check('shortest interval, low', () => mass().shortest95[0], {
      value: '1.0834',
      unit: 'mg',
      absolute: 0.002,
      because: 'drawn; the shortest interval is flat about its place',
    }),
    check('shortest interval, high', () => mass().shortest95[1], {
      value: '1.3825',
      unit: 'mg',
      absolute: 0.002,
      because: 'drawn; the shortest interval is flat about its place',
    }),
    check(
      'u by the law of propagation',
      () =>
        propagate([0.05, 0.02].map((standardUncertainty) => ({ standardUncertainty, sensitivity: 1 })))
          .standardUncertainty,
      { value: '0.0539', unit: 'mg' },
    ),
  ]),
  describeSource('JCGM 101:2008, 9.4, comparison loss of power meters, uncorrelated', 'from memory', [
    ...loss(0, ['50', '50', '0', '150']),
    ...loss(0.01, ['150', '112', '0', '367']),
    ...loss(0.05, ['2551', '502', '1590', '3543']),
  ]),
  describeSource('JCGM 100:2008, H.1, end gauge', 'read', [
    check('combined standard uncertainty', endGauge, { value: '32', unit: 'nm' }),
  ]),
  describeSource('JCGM 100:2008, H.2, resistance and reactance with correlation', 'read', [
    check('u(R)', () => impedance([cos(phase) / current, (-ratio / current) * cos(phase), -ratio * sin(phase)]), {
      value: '0.071',
      unit: 'Ω',
    }),
    check('u(X)', () => impedance([sin(phase) / current, (-ratio / current) * sin(phase), ratio * cos(phase)]), {
      value: '0.296',
      unit: 'Ω',
      absolute: 0.001,
      because: 'printed as 0.295 and as 0.296; the readings give 0.2956',
    }),
    check('u(Z)', () => impedance([1 / current, -ratio / current, 0]), { value: '0.236', unit: 'Ω' }),
  ]),
];
