import { z } from 'zod';
import { remarkSchema } from '../language/mechanics/remark.ts';
import {
  elasticInteractionRequestSchema,
  elasticInteraction as playedThrough,
} from '../layout/interaction/elastic-interaction.ts';
import { calculation, MAKER_FIRST } from './calculation.ts';
import { RING_EXAMPLE } from './ring-example.ts';

const newtons = (what: string) => z.number().describe(`${what}, N`);

/** How even forces are; the same words in every calculation of rounds. */
export const evennessFields = {
  meanN: newtons('mean of the forces'),
  spread: z.number().describe('largest less smallest force, over the mean'),
  coefficientOfVariation: z.number().describe('standard deviation of the forces over their mean'),
};

export const assumptionsField = z.array(remarkSchema).readonly().describe('what was taken for granted');

export const matrixField = (what: string) => z.array(z.array(z.number()).readonly()).readonly().describe(what);

export const ELASTIC_ONLY =
  'Bolts and joint are elastic here; friction, creep of the gasket and scatter of the wrench come on top.';

/** Of every calculation that rests on how one bolt unloads another. */
export const INTERACTION_SOURCES = [
  'Bibel and Ezell, J. Pressure Vessel Technol. 114 (1992) 439: elastic interaction coefficients (from memory)',
  'Derived from the compliance of joint and bolts; slack bolts as a linear complementarity problem',
];

export const elasticInteraction = calculation({
  name: 'elastic-interaction',
  title: 'What each pull does to the other bolts, and what is left of the forces after the rounds',
  cautions: [MAKER_FIRST, ELASTIC_ONLY],
  sources: INTERACTION_SOURCES,
  input: elasticInteractionRequestSchema,
  output: z.strictObject({
    finalN: z.array(z.number()).readonly().describe('forces by position in the end, N'),
    ...evennessFields,
    minOverTarget: z.number().describe('smallest of final force over its last target'),
    pulls: z.number().int().describe('how often a wrench is put on'),
    idlePulls: z.number().int().describe('pulls that turned nothing, as the bolt carried as much already'),
    afterEachRound: z
      .array(
        z.strictObject({
          round: z.number().int(),
          meanN: newtons('mean'),
          leastN: newtons('least force'),
          mostN: newtons('greatest force'),
          spread: evennessFields.spread,
          coefficientOfVariation: evennessFields.coefficientOfVariation,
        }),
      )
      .readonly()
      .describe('how even the forces are after each round'),
    afterEachPull: matrixField('forces by position after each pull, N').optional(),
    interaction: matrixField('change of every bolt’s force for a unit put on one, all tight; by columns'),
    assumptions: assumptionsField,
  }),
  example: {
    model: RING_EXAMPLE,
    order: [1, 5, 3, 7, 2, 6, 4, 8],
    targetsN: [30_000, 70_000, 100_000],
  },
  work: playedThrough,
});
