import { z } from 'zod';
import { invalid, ok, type Result } from '../failure/failure.ts';
import { conformityOf } from './conformity.ts';
import type { Reason, Verdict } from './verdict.ts';

type Known = NonNullable<Reason['quantity']>;

/** One measured quantity with its limits, all in one unit. */
export interface Quantity<Name extends string = Known> {
  readonly name: Name;
  /** Left out: not measured. */
  readonly value?: number | undefined;
  readonly lower?: number | undefined;
  readonly upper?: number | undefined;
  /** Inside, but nearer to a limit than this, is doubtful. Left out: 0. */
  readonly guardBand?: number | undefined;
  /** Of the value, normal about it. */
  readonly standardUncertainty?: number | undefined;
  /** Inside, but with a greater chance of lying outside than this, is doubtful; wants the standard uncertainty. */
  readonly maximumRisk?: number | undefined;
}

export const quantitiesSchema = z.strictObject({
  quantities: z
    .array(
      z.strictObject({
        name: z.string().trim().min(1).max(100).describe('what was measured, such as torque'),
        value: z.number().optional().describe('measured figure; left out: not measured'),
        lower: z.number().optional().describe('lower limit, in the unit of the figure'),
        upper: z.number().optional().describe('upper limit, in the unit of the figure'),
        guardBand: z.number().min(0).optional().describe('nearer than this to a limit is doubtful'),
        standardUncertainty: z.number().min(0).optional().describe('of the figure, in its unit'),
        maximumRisk: z
          .number()
          .gt(0)
          .max(0.5)
          .optional()
          .describe('doubtful where the chance of lying outside is greater than this; wants standardUncertainty'),
      }),
    )
    .min(1)
    .max(100)
    .describe('quantities with their limits'),
});

/** Why the verdict is what it is, one for each quantity in the order given. */
export interface Finding<Name extends string = Known> {
  code: 'inside' | 'below-lower' | 'above-upper' | 'inside-guard-band' | 'not-measured';
  quantity: Name;
  value?: number;
  /** The limit that was missed or is too near. */
  limit?: number;
  /** Chance that the true value lies beyond the limit that is too near. */
  probability?: number;
}

const VERDICT_OF: Readonly<Record<Finding['code'], Verdict>> = {
  'above-upper': 'over',
  'below-lower': 'under',
  'inside-guard-band': 'doubtful',
  'not-measured': 'doubtful',
  inside: 'within',
};

/** What hides what: a fastener pulled over is told so, whatever else was too little. */
const PRECEDENCE: readonly Verdict[] = ['over', 'under', 'doubtful', 'within'];

/**
 * One verdict over several quantities: `over` before `under` before `doubtful` before `within`. A figure exactly on a
 * limit is inside; one exactly as far from it as the guard band is not in doubt. Nothing is rounded.
 *
 * @returns refused with a field such as `quantities[1].lower` where limits are missing, crossed, or no numbers
 * @source decision with guard band: JCGM 106:2012, 8.3, by chance: 7.3 and 8.4; zones as in ILAC-G8:09/2019
 */
export function judgeQuantities<Name extends string = Known>(
  quantities: readonly Quantity<Name>[],
): Result<{ verdict: Verdict; reasons: Finding<Name>[] }> {
  if (quantities.length === 0) return invalid('quantities', 'there is nothing to judge', 'at least one quantity');
  for (const [index, quantity] of quantities.entries()) {
    const flaw = flawOf(quantity, `quantities[${index}]`);
    if (flaw) return flaw;
  }
  const reasons = quantities.map((quantity) => findingOf(quantity));
  const verdict = PRECEDENCE.find((candidate) => reasons.some(({ code }) => VERDICT_OF[code] === candidate));
  if (!verdict) throw new Error('every finding has a verdict');
  return ok({ verdict, reasons });
}

function flawOf<Name extends string>(quantity: Quantity<Name>, field: string): ReturnType<typeof invalid> | undefined {
  const { name, lower, upper, guardBand } = quantity;
  for (const part of ['value', 'lower', 'upper', 'guardBand', 'standardUncertainty'] as const) {
    const figure = quantity[part];
    if (figure !== undefined && !Number.isFinite(figure)) {
      return invalid(`${field}.${part}`, `${part} of ${name} is ${figure}`, 'a finite number');
    }
  }
  if (lower === undefined && upper === undefined) {
    return invalid(field, `${name} has no limits`, 'a lower limit, an upper limit, or both');
  }
  if (lower !== undefined && upper !== undefined && lower > upper) {
    return invalid(
      `${field}.lower`,
      `the lower limit ${lower} of ${name} lies above the upper ${upper}`,
      `at most ${upper}`,
    );
  }
  if (guardBand !== undefined && guardBand < 0) {
    return invalid(`${field}.guardBand`, `the guard band of ${name} is ${guardBand}`, '0 or more');
  }
  if (quantity.maximumRisk !== undefined && quantity.standardUncertainty === undefined) {
    return invalid(`${field}.standardUncertainty`, `no chance can be told of ${name} without it`, '0 or more');
  }
  return undefined;
}

function findingOf<Name extends string>(quantity: Quantity<Name>): Finding<Name> {
  const { name, value, lower, upper, guardBand = 0 } = quantity;
  if (value === undefined) return { code: 'not-measured', quantity: name };
  const found = { quantity: name, value };
  if (upper !== undefined && value > upper) return { code: 'above-upper', ...found, limit: upper };
  if (lower !== undefined && value < lower) return { code: 'below-lower', ...found, limit: lower };
  const aboveLower = lower === undefined ? Number.POSITIVE_INFINITY : value - lower;
  const belowUpper = upper === undefined ? Number.POSITIVE_INFINITY : upper - value;
  const limit = aboveLower <= belowUpper ? lower : upper;
  const chance = chanceOf(quantity, value, limit);
  const isTooRisky = chance !== undefined && chance.outside > (quantity.maximumRisk ?? 1);
  if (limit === undefined || (Math.min(aboveLower, belowUpper) >= guardBand && !isTooRisky))
    return { code: 'inside', ...found };
  return {
    code: 'inside-guard-band',
    ...found,
    limit,
    ...(chance === undefined ? {} : { probability: toThreeDigits(chance.beyondLimit) }),
  };
}

/** More digits of a chance would tell nothing, and could differ from one machine to the next. */
const toThreeDigits = (probability: number): number => Number(probability.toPrecision(3));

function chanceOf<Name extends string>(
  { standardUncertainty, lower, upper }: Quantity<Name>,
  value: number,
  limit: number | undefined,
): { readonly outside: number; readonly beyondLimit: number } | undefined {
  if (standardUncertainty === undefined) return undefined;
  const { below, above } = conformityOf(value, standardUncertainty, { lower, upper });
  return { outside: below + above, beyondLimit: limit === upper ? above : below };
}
