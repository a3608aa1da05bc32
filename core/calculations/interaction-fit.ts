import { z } from 'zod';
import { interactionFit as fitOf, interactionFitRequestSchema } from '../layout/fit/interaction-fit.ts';
import { calculation } from './calculation.ts';
import { assumptionsField, INTERACTION_SOURCES, matrixField } from './elastic-interaction.ts';

export const interactionFit = calculation({
  name: 'interaction-fit',
  title: 'How much neighbours take part in each other, learned from measurements',
  cautions: [
    'Holds for the joint, the gasket and the forces that were measured; a new gasket is another joint.',
    'A re-check torque also holds the friction at rest; load cells or stretch tell more.',
  ],
  sources: [...INTERACTION_SOURCES, 'JCGM 100:2008: standard uncertainty of fitted figures'],
  input: interactionFitRequestSchema,
  output: z.strictObject({
    neighbour: z.number().describe('compliance between neighbours over that of one bolt'),
    decay: z.number().describe('of each farther neighbour over the one before'),
    neighbourUncertainty: z.number().describe('standard uncertainty').optional(),
    decayUncertainty: z.number().describe('standard uncertainty').optional(),
    correlation: z.number().describe('of both figures, -1 to 1'),
    degreesOfFreedom: z.number().int().describe('measurements to spare'),
    residualN: z.number().describe('standard deviation of what the figures leave over, N'),
    fitted: z
      .array(
        z.strictObject({
          afterPull: z.number().int(),
          position: z.number().int(),
          measuredN: z.number(),
          fittedN: z.number(),
        }),
      )
      .readonly()
      .describe('each measurement beside what the figures give'),
    interaction: matrixField('change of every bolt’s force for a unit put on one, all tight; by columns'),
    assumptions: assumptionsField,
  }),
  example: {
    arrangement: 'circle',
    count: 8,
    order: [1, 5, 3, 7, 2, 6, 4, 8],
    targetsN: [100_000],
    measured: [
      { afterPull: 5, position: 1, forceN: 82_000 },
      { afterPull: 5, position: 3, forceN: 69_500 },
      { afterPull: 6, position: 5, forceN: 84_500 },
      { afterPull: 8, position: 1, forceN: 46_000 },
      { afterPull: 8, position: 2, forceN: 130_500 },
      { afterPull: 8, position: 3, forceN: 31_500 },
      { afterPull: 8, position: 5, forceN: 44_500 },
      { afterPull: 8, position: 7, forceN: 28_500 },
    ],
  },
  isLong: true,
  work: fitOf,
});
