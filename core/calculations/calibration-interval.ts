import { z } from 'zod';
import { RUN_RULES } from '../statistics/control-chart.ts';
import { INTERVAL_METHODS, calibrationInterval as intervalOf } from '../wrench/interval/calibration-interval.ts';
import { CLOCKS, foundSchema } from '../wrench/interval/history.ts';
import { RELIABILITY_MODELS } from '../wrench/interval/reliability.ts';
import { calculation } from './calculation.ts';
import { warningsField } from './tightened-fields.ts';

const days = (what: string) => z.number().positive().max(36_500).describe(`${what}, days`);
const pulls = (what: string) => z.number().positive().max(1e8).describe(`${what}, pulls`);
const basis = z.enum(['fitted', 'adjusted', 'kept', 'by-use', 'no-failure']);

export const calibrationInterval = calculation({
  name: 'calibration-interval',
  title: 'When a wrench is to be calibrated next, by days or pulls, whichever comes first',
  cautions: [
    'An interval holds for wrenches of one kind, used alike; one that was dropped or shows otherwise is calibrated at once.',
    'Customers, codes and the maker may order a shorter interval; theirs comes first.',
  ],
  sources: [
    'ILAC-G24:2007 / OIML D 10: staircase, control chart, in-use time, other statistical approaches',
    'W. Nelson, Applied Life Data Analysis (1982): maximum likelihood with censoring',
    'W. Q. Meeker and L. A. Escobar, Statistical Methods for Reliability Data (1998), 8.3: profile likelihood',
    'A year or 5000 pulls where nothing is known: common practice',
  ],
  input: z.strictObject({
    method: z.enum(INTERVAL_METHODS).describe('method of ILAC-G24 / OIML D 10'),
    history: z
      .array(foundSchema)
      .min(1)
      .max(10_000)
      .describe('calibrations, the oldest first; of one wrench, or of wrenches of one kind used alike'),
    wantedShare: z.number().min(0.5).max(0.999).default(0.95).describe('share that is to be found inside its limits'),
    confidence: z.number().min(0.6).max(0.999).default(0.95).describe('of the limits of the interval, one-sided'),
    model: z
      .enum(RELIABILITY_MODELS)
      .default('exponential')
      .describe('for the method reliability: failing at any time alike, or early or by wear'),
    currentIntervalDays: days('interval in force').default(365),
    currentIntervalPulls: pulls('interval in force').default(5000),
    extension: z
      .number()
      .min(0.01)
      .max(1)
      .default(0.1)
      .describe('for staircase and in-use time: how much longer after one found in, fraction'),
    limitPercent: z
      .number()
      .positive()
      .max(100)
      .describe('for the control chart: permissible deviation, percent')
      .optional(),
    shortestDays: days('never shorter than').default(14),
    longestDays: days('never longer than').default(1095),
  }),
  output: z.strictObject({
    method: z.enum(INTERVAL_METHODS),
    intervalDays: z.number().describe('days'),
    intervalPulls: z.number().describe('pulls'),
    comesFirst: z.enum([...CLOCKS, 'unknown']).describe('by the use there was'),
    heldAt: z.enum(['free', 'shortest', 'longest']).describe('whether shortestDays or longestDays cut it off'),
    lowerDays: z.number().describe('confidence limit below, by profile likelihood, days').optional(),
    upperDays: z.number().describe('confidence limit above, by profile likelihood, days').optional(),
    lowerPulls: z.number().describe('confidence limit below, by profile likelihood, pulls').optional(),
    basisDays: basis.describe('where the days come from'),
    basisPulls: basis.describe('where the pulls come from'),
    foundIn: z.number().describe('calibrations found inside the limits'),
    foundOut: z.number().describe('calibrations found outside the limits'),
    shareAtCurrent: z.number().describe('share still inside after the interval in force').optional(),
    fits: z
      .array(
        z.strictObject({
          clock: z.enum(CLOCKS),
          model: z.enum(RELIABILITY_MODELS),
          shapeParameter: z.number().describe('below 1 early failures, above 1 wear'),
          scale: z.number().describe('where the share e⁻¹ is left, in days or pulls'),
          logLikelihood: z.number(),
          aic: z.number().describe('smaller is better'),
          interval: z.number().describe('where the wanted share is left, in days or pulls'),
          intervalLower: z.number().describe('confidence limit below'),
          intervalUpper: z.number().describe('confidence limit above; left out where none can be told').optional(),
        }),
      )
      .readonly()
      .optional(),
    drift: z
      .strictObject({
        meanDrift: z.number().describe('percent a day'),
        driftSd: z.number().describe('percent a day'),
        intervalDays: z.number().describe('days, before it is held between shortest and longest'),
        signals: z
          .array(
            z.strictObject({
              runRule: z.enum(RUN_RULES),
              first: z.number(),
              last: z.number(),
              side: z.enum(['above', 'below']),
            }),
          )
          .readonly(),
      })
      .optional(),
    curve: z
      .array(z.strictObject({ time: z.number().describe('days'), share: z.number().describe('still inside') }))
      .readonly()
      .describe('share still inside over the days')
      .optional(),
    warnings: warningsField,
  }),
  example: {
    method: 'reliability',
    history: [
      { days: 180, pulls: 2100, found: 'in', howMany: 9 },
      { days: 365, pulls: 4300, found: 'in', howMany: 14 },
      { days: 365, pulls: 5200, found: 'out', howMany: 2 },
      { days: 540, pulls: 6900, found: 'in', howMany: 5 },
      { days: 540, pulls: 7300, found: 'out', howMany: 3, goodAtDays: 210, goodAtPulls: 2700 },
    ],
    wantedShare: 0.95,
    currentIntervalDays: 365,
  },
  work: intervalOf,
});
