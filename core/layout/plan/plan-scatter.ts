import { z } from 'zod';
import { fillNormal } from '../../statistics/normal-draw.ts';
import { randomWords } from '../../statistics/random-words.ts';
import { inGroups } from '../in-groups.ts';
import { evennessOf } from '../interaction/evenness.ts';
import { type Round, simulate } from '../interaction/simulate.ts';
import type { SourcedJoint } from '../interaction/source.ts';

/** What is told of friction and how it is drawn. */
export const scatterFields = {
  frictionScatter: z
    .number()
    .gt(0)
    .max(1)
    .describe(
      'how far the force at one torque scatters from bolt to bolt: 95 % lie within ± this share, 0.25 for ± 25 %',
    )
    .optional(),
  draws: z
    .number()
    .int()
    .min(0)
    .max(100_000)
    .default(1000)
    .describe('how often is drawn, up to 100 000; less often for many bolts'),
  seed: z.number().int().min(0).max(4_294_967_295).default(1).describe('the same seed draws the same'),
};
const scatterSchema = z.object(scatterFields);

export const PLANS = ['planned', 'plain', 'plain and round the joint'] as const;

/** What a plan comes to once friction scatters. */
export interface PlanScatter {
  readonly plan: (typeof PLANS)[number];
  readonly pulls: number;
  /** How often was drawn. */
  readonly draws: number;
  readonly spreadOnPaper: number;
  readonly spreadMean: number;
  readonly spread95: number;
  readonly minOverTargetMean: number;
  readonly minOverTarget05: number;
  readonly peak95N: number;
}

interface Planned {
  readonly joint: SourcedJoint;
  readonly finalN: readonly number[];
  readonly rounds: readonly Round[];
  readonly atOnce: number;
}

/** Rounds by common practice, for comparison: three in the same order, two by the numbers. */
const PLAIN_SHARES = [0.3, 0.7, 1];
const CLOSING_ROUNDS = 2;

/** Steps of reckoning that draws may take, some seconds; a cube of the bolts for each draw. */
const MOST_WORK = 2e8;
const FEWEST = 40;

/**
 * The plan, and plain rounds beside it, with friction that scatters from bolt to bolt and stays with its bolt: every
 * pull on it brings the same multiple of what was aimed at. The multiples are log-normal with mean 1.
 *
 * @returns undefined where no scatter is told or nothing is drawn
 */
export function scatterOf(
  { frictionScatter, draws, seed }: z.infer<typeof scatterSchema>,
  planned: Planned,
): readonly PlanScatter[] | undefined {
  if (frictionScatter === undefined || draws === 0) return undefined;
  const count = planned.finalN.length;
  const made = Math.min(draws, Math.max(FEWEST, Math.ceil(MOST_WORK / count ** 3)));
  const factors = drawnFactors(frictionScatter, count, made, seed);
  return plansOf(planned).map(([plan, rounds]) => scattered(plan, rounds, planned, factors));
}

function plansOf({
  rounds,
  finalN,
  atOnce,
}: Planned): readonly (readonly [(typeof PLANS)[number], readonly Round[]])[] {
  const { bolts } = rounds[0]!;
  const toward = (order: readonly number[], share: number): Round => ({
    bolts: order,
    targetsN: order.map((bolt) => share * finalN[bolt]!),
    groups: inGroups(order, atOnce),
  });
  const byNumber = roundTheJoint(bolts, atOnce);
  return [
    ['planned', rounds],
    ['plain', rounds.map((round, index) => toward(round.bolts, (index + 1) / rounds.length))],
    [
      'plain and round the joint',
      [
        ...PLAIN_SHARES.map((share) => toward(bolts, share)),
        ...Array.from({ length: CLOSING_ROUNDS }, () => toward(byNumber, 1)),
      ],
    ],
  ];
}

/** By the numbers; the groups of several wrenches by the lowest of each. */
const roundTheJoint = (bolts: readonly number[], atOnce: number): readonly number[] =>
  inGroups(bolts, atOnce)
    .toSorted((a, b) => Math.min(...a) - Math.min(...b))
    .flat();

const IN_95 = 1.959_963_984_540_054;

/** Multiples of what is aimed at, by draw and bolt. */
function drawnFactors(scatter: number, bolts: number, draws: number, seed: number): readonly Float64Array[] {
  const words = randomWords(seed);
  const deviation = Math.sqrt(Math.log(1 + (scatter / IN_95) ** 2));
  return Array.from({ length: draws }, () => {
    const column = new Float64Array(bolts);
    fillNormal(words, column, bolts, { value: -(deviation ** 2) / 2, standardUncertainty: deviation });
    return column.map(Math.exp);
  });
}

function scattered(
  plan: (typeof PLANS)[number],
  rounds: readonly Round[],
  { joint, finalN }: Planned,
  factors: readonly Float64Array[],
): PlanScatter {
  const spreads = new Float64Array(factors.length);
  const least = new Float64Array(factors.length);
  const peaks = new Float64Array(factors.length);
  for (const [draw, factor] of factors.entries()) {
    const drawn = rounds.map((round) => ({
      ...round,
      targetsN: round.bolts.map((bolt, pull) => round.targetsN[pull]! * factor[bolt]!),
    }));
    const ended = simulate(joint, drawn, undefined, (forcesN) => {
      for (const force of forcesN) if (force > peaks[draw]!) peaks[draw] = force;
    }).finalN;
    spreads[draw] = evennessOf(ended).spread;
    least[draw] = Math.min(...finalN.map((target, bolt) => ended[bolt]! / target));
  }
  return {
    plan,
    pulls: rounds.length * finalN.length,
    draws: factors.length,
    spreadOnPaper: evennessOf(simulate(joint, rounds).finalN).spread,
    spreadMean: mean(spreads),
    spread95: quantile(spreads, 0.95),
    minOverTargetMean: mean(least),
    minOverTarget05: quantile(least, 0.05),
    peak95N: quantile(peaks, 0.95),
  };
}

const mean = (values: Float64Array): number => values.reduce((sum, value) => sum + value, 0) / values.length;

/** Of the drawn figures the one below which so many of them lie. */
function quantile(values: Float64Array, share: number): number {
  const sorted = values.toSorted();
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))]!;
}
