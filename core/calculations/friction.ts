import { z } from 'zod';
import { friction as frictionOf } from '../joint/friction/friction-series.ts';
import { stepShownSchema } from '../joint/step-shown.ts';
import { calculation } from './calculation.ts';
import { tightenedFields, warningsField } from './tightened-fields.ts';

const { thread, head, bearingOuterMm, holeSeries, holeMm } = tightenedFields;

const torque = (what: string) => z.number().positive().max(1e6).describe(`${what}, N·m`);

const test = {
  torqueNm: torque('tightening torque'),
  threadTorqueNm: torque('torque of the thread, where the rig measures it').optional(),
  preloadN: z.number().positive().max(1e8).describe('preload measured, N'),
};

const coefficients = {
  total: z.number().describe('coefficient of friction for thread and bearing face together'),
  thread: z.number().describe('coefficient of friction in the thread').optional(),
  bearing: z.number().describe('coefficient of friction under head or nut').optional(),
  nutFactor: z.number().describe('K of T = K·d·F'),
};

export const friction = calculation({
  name: 'friction',
  title: 'Friction from a torque-tension test, or from a series of tests with its statistics',
  cautions: [
    'Holds for the parts, the lubricant and the speed that were tested, and for a first tightening; used again, they behave otherwise.',
    'Test at the preload that is wanted, as a rule 75\u00a0% of the proof load.',
  ],
  sources: [
    'ISO 16047:2005: torque and clamp force testing of fasteners',
    'JCGM 100:2008, 4.2: mean and standard deviation',
  ],
  input: z.strictObject({
    thread,
    head,
    bearingOuterMm,
    holeSeries,
    holeMm,
    torqueNm: test.torqueNm.optional(),
    threadTorqueNm: test.threadTorqueNm,
    preloadN: test.preloadN.optional(),
    tests: z
      .array(z.strictObject(test))
      .min(1)
      .max(10_000)
      .describe('a series, instead of torqueNm and preloadN')
      .optional(),
  }),
  output: z.strictObject({
    ...coefficients,
    found: z.array(z.strictObject(coefficients)).readonly().describe('each test of a series'),
    statistics: z
      .array(
        z.strictObject({
          quantity: z.enum(['total', 'thread', 'bearing', 'nutFactor']),
          count: z.number(),
          mean: z.number(),
          standardDeviation: z.number().optional(),
          minimum: z.number(),
          maximum: z.number(),
          coefficientOfVariation: z.number().describe('standard deviation over mean').optional(),
        }),
      )
      .readonly()
      .describe('of a series'),
    bearingOuterMm: z.number().describe('mm'),
    holeMm: z.number().describe('mm'),
    warnings: warningsField,
    steps: z.array(stepShownSchema).readonly().describe('the working of a single test, to be checked by hand'),
  }),
  example: { thread: 'M12', torqueNm: 80, threadTorqueNm: 38, preloadN: 40_000 },
  work: frictionOf,
});
