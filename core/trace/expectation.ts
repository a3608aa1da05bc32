import { z } from 'zod';

/** What a figure is usually, and how much it differs from pull to pull. */
export const spreadSchema = z.strictObject({
  median: z.number().describe('what the figure is usually'),
  deviation: z.number().min(0).describe('how much it differs from pull to pull, standard deviation'),
});
export type Spread = z.infer<typeof spreadSchema>;

/** What a sound pull of a joint looks like. */
export const expectationSchema = z.strictObject({
  /** From the joint's mechanics, or from its own accepted traces. */
  basis: z.enum(['mechanics', 'learned']).describe('where it is from: the joint’s mechanics, or its accepted traces'),
  /** How many traces it was learned from. */
  traces: z.number().int().min(0).optional().describe('how many accepted traces it was learned from'),
  slopeNmPerDeg: spreadSchema.optional().describe('elastic slope, N·m a degree'),
  angleFromSnugDeg: spreadSchema.optional().describe('turning from snug to the end, degrees'),
  prevailingTorqueNm: spreadSchema.optional().describe('torque that turns the fastener before it clamps, N·m'),
  snugTorqueNm: spreadSchema.optional().describe('torque at snug, N·m'),
  riseDeg: spreadSchema.optional().describe('turning from a tenth of the target to the whole of it, degrees'),
});
export type Expectation = z.infer<typeof expectationSchema>;

/** What of a trace is kept to learn from. */
export const traceFiguresSchema = z.strictObject({
  slopeNmPerDeg: z.number().optional(),
  angleFromSnugDeg: z.number().optional(),
  prevailingTorqueNm: z.number(),
  snugTorqueNm: z.number().optional(),
  riseDeg: z.number().optional(),
});
export type TraceFigures = z.infer<typeof traceFiguresSchema>;

/** Fewer accepted traces say too little of the spread: at 8 its relative uncertainty is a quarter (1/√(2(n-1))). */
export const FEWEST_TRACES = 8;
const MAD_TO_DEVIATION = 1.4826;

/**
 * What a joint's own traces teach, by median and median absolute deviation.
 *
 * @param figures of accepted traces alone: a rejected one must never move what the next is held to
 * @returns undefined until there are {@link FEWEST_TRACES}
 * @source Hampel, J. Amer. Statist. Assoc. 69 (1974) 383: median absolute deviation
 */
export function learn(figures: readonly TraceFigures[]): Expectation | undefined {
  if (figures.length < FEWEST_TRACES) return undefined;
  const of = (pick: (one: TraceFigures) => number | undefined): Spread | undefined =>
    spreadOf(figures.flatMap((one) => pick(one) ?? []));
  const slopeNmPerDeg = of((one) => one.slopeNmPerDeg);
  const snugTorqueNm = of((one) => one.snugTorqueNm);
  const riseDeg = of((one) => one.riseDeg);
  const angleFromSnugDeg = of((one) => one.angleFromSnugDeg);
  const prevailingTorqueNm = of((one) => one.prevailingTorqueNm);
  return {
    basis: 'learned',
    traces: figures.length,
    ...(slopeNmPerDeg ? { slopeNmPerDeg } : {}),
    ...(angleFromSnugDeg ? { angleFromSnugDeg } : {}),
    ...(prevailingTorqueNm ? { prevailingTorqueNm } : {}),
    ...(snugTorqueNm ? { snugTorqueNm } : {}),
    ...(riseDeg ? { riseDeg } : {}),
  };
}

function spreadOf(values: readonly number[]): Spread | undefined {
  if (values.length < FEWEST_TRACES) return undefined;
  const median = medianOf(values);
  return { median, deviation: MAD_TO_DEVIATION * medianOf(values.map((value) => Math.abs(value - median))) };
}

function medianOf(values: readonly number[]): number {
  const sorted = values.toSorted((a, b) => a - b);
  const middle = sorted.length >> 1;
  return sorted.length % 2 === 1 ? sorted[middle]! : (sorted[middle - 1]! + sorted[middle]!) / 2;
}

/** So many deviations from the median are beyond what a sound pull does. */
const BEYOND = 5;

/** Highest figure of a sound pull: at least `share` of the median above it. */
export const highestOf = ({ median, deviation }: Spread, share: number): number =>
  median + Math.max(BEYOND * deviation, share * Math.abs(median));

/** Lowest figure of a sound pull. */
export const lowestOf = ({ median, deviation }: Spread, share: number): number =>
  median - Math.max(BEYOND * deviation, share * Math.abs(median));
