import { z } from 'zod';
import { PLANS } from '../layout/plan/plan-scatter.ts';
import { roundTargetsRequestSchema, roundTargets as targetsOf } from '../layout/plan/round-targets.ts';
import { calculation, MAKER_FIRST } from './calculation.ts';
import {
  assumptionsField,
  ELASTIC_ONLY,
  evennessFields,
  INTERACTION_SOURCES,
  matrixField,
} from './elastic-interaction.ts';
import { RING_EXAMPLE } from './ring-example.ts';
import { warningsField } from './tightened-fields.ts';

const share = (what: string) => z.number().describe(what);

export const roundTargets = calculation({
  name: 'round-targets',
  title: 'The force to give at each pull so that the rounds end even',
  cautions: [
    MAKER_FIRST,
    ELASTIC_ONLY,
    'A plan in one round is only as good as the matrix and the friction it rests on; look at its scatter before it is used.',
  ],
  sources: INTERACTION_SOURCES,
  input: roundTargetsRequestSchema,
  output: z.strictObject({
    targetsN: matrixField('for each round the force to give at each pull, in the order of the pulls, N'),
    finalN: z.array(z.number()).readonly().describe('forces by position in the end, N'),
    ...evennessFields,
    pulls: z.number().int().describe('how often a wrench is put on'),
    peakN: z.number().describe('greatest force of any bolt at any time, N'),
    warnings: warningsField,
    roundShares: z
      .array(z.number())
      .readonly()
      .describe('share of the final force after each round; absent where rounds do not end even')
      .optional(),
    torquesNm: matrixField('the same as torques at the fastener, N·m').optional(),
    settingsNm: matrixField('what the wrench must show for them, N·m').optional(),
    scatter: z
      .array(
        z.strictObject({
          plan: z.enum(PLANS),
          pulls: z.number().int(),
          draws: z.number().int().describe('how often was drawn'),
          spreadOnPaper: share('spread without scatter'),
          spreadMean: share('spread with scatter, mean of the draws'),
          spread95: share('spread that 95 % of the draws do not pass'),
          minOverTargetMean: share('smallest force over its target, mean of the draws'),
          minOverTarget05: share('smallest force over its target that 95 % of the draws pass'),
          peak95N: z.number().describe('greatest force at any time that 95 % of the draws do not pass, N'),
        }),
      )
      .readonly()
      .describe('what friction makes of this plan, of plain rounds, and of three plain rounds with two round the joint')
      .optional(),
    assumptions: assumptionsField,
  }),
  example: {
    model: RING_EXAMPLE,
    order: [1, 5, 3, 7, 2, 6, 4, 8],
    finalN: 100_000,
    rounds: 2,
    ceilingN: 130_000,
    thread: 'M27',
    nutFactor: 0.18,
    leverMm: 900,
    frictionScatter: 0.25,
  },
  isLong: true,
  work: targetsOf,
});
