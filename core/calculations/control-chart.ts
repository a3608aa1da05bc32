import { z } from 'zod';
import { invalid, ok } from '../failure/failure.ts';
import { remark } from '../language/mechanics/remark.ts';
import { controlChart as chartOf, RUN_RULES } from '../statistics/control-chart.ts';
import { calculation } from './calculation.ts';
import { warningsField } from './tightened-fields.ts';

/** Common practice; the NIST handbook asks for enough to know the process. */
const FEW_VALUES = 20;

export const controlChart = calculation({
  name: 'control-chart',
  title: 'Whether a series stays as it is: individuals and moving ranges, with run rules',
  cautions: [
    'A signal asks for a cause; it is no proof of one. About one value in a hundred gives one by chance when all rules are read.',
    'Limits of the chart are what the process does, not what is allowed.',
  ],
  sources: [
    'NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.2: individuals chart, d2 1.128 and D4 3.267',
    'NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2: Western Electric rules and trends',
    'ISO 7870-2: Shewhart control charts',
  ],
  input: z.strictObject({
    values: z.array(z.number()).min(2).max(100_000).describe('measured values in the order of time, at least 2'),
    baseline: z
      .number()
      .int()
      .min(2)
      .describe('how many of the first values give center and limits; all when left out')
      .optional(),
  }),
  output: z.strictObject({
    center: z.number().describe('mean of the baseline'),
    lower: z.number().describe('lower limit of the chart, center − 3 sigma'),
    upper: z.number().describe('upper limit of the chart, center + 3 sigma'),
    signals: z
      .array(
        z.strictObject({
          runRule: z.enum(RUN_RULES).describe('what was seen'),
          first: z.number().describe('first value that belongs to it, from 1'),
          last: z.number().describe('last value that belongs to it, from 1'),
          side: z.enum(['above', 'below']).describe('side of the center, or way of the trend'),
        }),
      )
      .readonly(),
    sigma: z.number().describe('standard deviation from one value to the next: mean moving range over 1.128'),
    meanMovingRange: z.number(),
    rangeUpper: z.number().describe('upper limit of the moving ranges, 3.267 times their mean'),
    movingRanges: z.array(z.number()).readonly(),
    warnings: warningsField,
  }),
  example: {
    values: [
      84.6, 86.1, 85.3, 84.9, 85.8, 85.1, 86.4, 85.2, 85.5, 85.0, 85.9, 84.8, 85.2, 86.0, 84.9, 85.4, 85.7, 84.7, 88.9,
      85.2,
    ],
  },
  work: ({ values, baseline }) => {
    if (baseline !== undefined && baseline > values.length)
      return invalid('baseline', `There are only ${values.length} values.`, `at most ${values.length}`);
    const count = baseline ?? values.length;
    const warnings =
      count < FEW_VALUES ? [{ field: 'values', ...remark('rough-limits', { count, wanted: FEW_VALUES }) }] : [];
    return ok({ ...chartOf(values, count), warnings });
  },
});
