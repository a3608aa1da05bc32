import { z } from 'zod';

/** What an uncertainty of a calibration comes from, in the order of ISO 6789-2:2017, clause 6. */
export const BUDGET_SOURCES = [
  'reference',
  'resolution',
  'reproducibility',
  'outputInterface',
  'driveInterface',
  'leverVariation',
  'repeatability',
] as const;
export type BudgetSource = (typeof BUDGET_SOURCES)[number];

export const contributionSchema = z.strictObject({
  source: z.enum(BUDGET_SOURCES),
  kind: z.enum(['A', 'B']).describe('evaluated from repeats (A) or otherwise (B)'),
  value: z.number().describe('as it went in, in its unit'),
  unit: z.string().describe('of the value: % or N·m'),
  distribution: z.enum(['normal', 'rectangular']),
  divisor: z.number().describe('value over standard uncertainty'),
  contribution: z.number().describe('relative standard uncertainty, percent of the reference value'),
  assumed: z.boolean().describe('not measured: a default stands for it'),
});
export type Contribution = z.infer<typeof contributionSchema>;

/** The four spreads that are measured once, at the lowest torque, as relative full widths in percent. */
export type Spread = 'reproducibility' | 'outputInterface' | 'driveInterface' | 'leverVariation';

/**
 * What stands for a contribution that nobody measured. The standard gives no figures: these are cautious assumptions of
 * this program, full widths in percent; the reference is taken as the poorest that the standard lets in, a quarter of
 * 4 %. Whoever wants a smaller uncertainty measures them.
 */
export const ASSUMED_PERCENT: Readonly<Record<Spread | 'reference', number>> = {
  reference: 1,
  reproducibility: 1,
  outputInterface: 0.5,
  driveInterface: 0.5,
  leverVariation: 1,
};

const SPREADS: readonly Spread[] = ['reproducibility', 'outputInterface', 'driveInterface', 'leverVariation'];

export interface BudgetInput {
  readonly meanReferenceNm: number;
  /** Of the readings of the reference, N·m, n − 1. */
  readonly standardDeviationNm: number;
  readonly repeats: number;
  readonly resolutionNm: number;
  /** Expanded, k = 2, percent; undefined: not told. */
  readonly referenceUncertaintyPercent: number | undefined;
  /** Full widths, N·m, with the mean reference at which they were measured. */
  readonly spreads: Readonly<Partial<Record<Spread, number>>>;
  readonly spreadsAtNm: number;
}

/**
 * Every contribution to the uncertainty of a wrench's calibration at one torque.
 *
 * w_md = W_md/2; w_r = r/(2√3 X̄_r); w_b = b/(2√3 X̄_r0) for each spread b, measured at X̄_r0; w_re = s/(√n X̄_r)
 *
 * @source ISO 6789-2:2017, clause 6 (list of contributions read, formulas from memory); JCGM 100:2008, 4.2.3 and 4.3.7
 */
export function budgetOf(input: BudgetInput): readonly Contribution[] {
  const { meanReferenceNm, standardDeviationNm, repeats, resolutionNm } = input;
  const percentOf = (partNm: number, divisor: number) => (partNm / divisor / meanReferenceNm) * 100;
  return [
    reference(input.referenceUncertaintyPercent),
    {
      source: 'resolution',
      kind: 'B',
      value: resolutionNm,
      unit: 'N·m',
      distribution: 'rectangular',
      divisor: FULL_WIDTH,
      contribution: percentOf(resolutionNm, FULL_WIDTH),
      assumed: false,
    },
    ...SPREADS.map((source) => spread(source, input)),
    {
      source: 'repeatability',
      kind: 'A',
      value: standardDeviationNm,
      unit: 'N·m',
      distribution: 'normal',
      divisor: Math.sqrt(repeats),
      contribution: percentOf(standardDeviationNm, Math.sqrt(repeats)),
      assumed: false,
    },
  ];
}

/** A full width of a rectangular distribution over its standard deviation. */
const FULL_WIDTH = 2 * Math.sqrt(3);

function reference(told: number | undefined): Contribution {
  const value = told ?? ASSUMED_PERCENT.reference;
  return {
    source: 'reference',
    kind: 'B',
    value,
    unit: '%',
    distribution: 'normal',
    divisor: 2,
    contribution: value / 2,
    assumed: told === undefined,
  };
}

function spread(source: Spread, { spreads, spreadsAtNm }: BudgetInput): Contribution {
  const measuredNm = spreads[source];
  const shape = { source, kind: 'B', distribution: 'rectangular', divisor: FULL_WIDTH } as const;
  if (measuredNm === undefined) {
    const value = ASSUMED_PERCENT[source];
    return { ...shape, value, unit: '%', contribution: value / FULL_WIDTH, assumed: true };
  }
  const contribution = (measuredNm / FULL_WIDTH / spreadsAtNm) * 100;
  return { ...shape, value: measuredNm, unit: 'N·m', contribution, assumed: false };
}

/** Combined relative standard uncertainty, percent. */
export const combined = (budget: readonly Contribution[]): number =>
  Math.hypot(...budget.map(({ contribution }) => contribution));
