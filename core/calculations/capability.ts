import { z } from 'zod';
import { capabilityStudy } from '../statistics/capability-study.ts';
import { calculation } from './calculation.ts';
import { warningsField } from './tightened-fields.ts';

const limit = (which: string) => z.number().describe(`${which} limit, in the unit of the values`).optional();
const ppm = (what: string) => z.number().describe(`${what}, parts per million`).optional();

const indices = {
  cp: z.number().describe('width of the limits over 6 sd; only between two limits').optional(),
  cpk: z.number().describe('room to the nearer limit over 3 sd'),
  cpLower: z.number().describe('room to the lower limit over 3 sd').optional(),
  cpUpper: z.number().describe('room to the upper limit over 3 sd').optional(),
};

export const capability = calculation({
  name: 'capability',
  title: 'How well a series of joints or wrenches keeps inside its limits',
  cautions: [
    'Holds for a process that is normal and stays as it is; look at its control chart first.',
    'A capable torque is no capable clamp force: friction scatters on top.',
  ],
  sources: [
    'ISO 22514-2: capability and performance of processes',
    'NIST/SEMATECH e-Handbook of Statistical Methods, 6.1.6: Cp, Cpk and their confidence limits',
    'A. F. Bissell, Appl. Statist. 39 (1990) 331: confidence limit of Cpk',
    'P. Royston, Remark AS R94, Appl. Statist. 44 (1995) 547: Shapiro-Wilk test',
  ],
  input: z.strictObject({
    values: z
      .array(z.number())
      .min(3)
      .max(1_000_000)
      .describe('measured values in the order of time, all in one unit, at least 3'),
    lower: limit('lower'),
    upper: limit('upper'),
  }),
  output: z.strictObject({
    n: z.number().describe('how many values'),
    mean: z.number(),
    sd: z.number().describe('standard deviation of all values, with n − 1'),
    sdUsed: z.literal('overall').describe('cp, cpk and their limits use the standard deviation of all values'),
    ...indices,
    cpkLower95: z.number().describe('Cpk is above this with 95 % confidence, one-sided'),
    cpkInterval95: z.tuple([z.number(), z.number()]).readonly().describe('interval of Cpk with 95 % confidence'),
    normality: z.strictObject({
      test: z.enum(['shapiro-wilk', 'anderson-darling']).describe('the latter above 5000 values'),
      statistic: z.number().describe('W, or A² corrected for the number of values'),
      p: z.number().describe('probability of a statistic this far off if the values were normal'),
    }),
    expectedBelowPpm: ppm('below the lower limit, were the values normal'),
    expectedAbovePpm: ppm('above the upper limit, were the values normal'),
    countBelow: z.number().describe('values below the lower limit'),
    countAbove: z.number().describe('values above the upper limit'),
    minimum: z.number(),
    maximum: z.number(),
    medianValue: z.number(),
    medianDeviation: z.number().describe('scaled so that normal values give their standard deviation'),
    within: z
      .strictObject({
        sd: z.number().describe('standard deviation from one value to the next: mean moving range over 1.128'),
        ...indices,
      })
      .describe('what the process could do if it did not wander'),
    histogram: z.strictObject({
      start: z.number(),
      end: z.number(),
      counts: z.array(z.number()).readonly().describe('values in bins of equal width'),
    }),
    warnings: warningsField,
  }),
  example: {
    values: [
      84.6, 86.1, 85.3, 84.9, 85.8, 85.1, 86.4, 84.2, 85.5, 85.0, 85.9, 84.8, 85.2, 86.0, 84.5, 85.4, 85.7, 84.7, 85.6,
      85.2, 86.2, 84.4, 85.3, 85.0, 85.8,
    ],
    lower: 82,
    upper: 90,
  },
  work: capabilityStudy,
});
