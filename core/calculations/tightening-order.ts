import { z } from 'zod';
import { orderOf, orderRequestSchema } from '../layout/order-request.ts';
import { calculation } from './calculation.ts';

export const tighteningOrder = calculation({
  name: 'tightening-order',
  title: 'The order in which the positions of a joint are tightened',
  cautions: [
    'The maker’s order comes first.',
    'A gasketed joint wants several rounds and a last one round the circle until no nut turns.',
  ],
  sources: [
    'ASME PCC-1, legacy cross pattern (from memory)',
    'Rectangles and lines from the middle out; wheels crosswise (common practice)',
    'RCSC specification: from the most rigid part to the free edges (read in an answer of the AISC)',
  ],
  input: orderRequestSchema,
  output: z.strictObject({
    order: z.array(z.number().int()).readonly().describe('positions from 1, each once'),
    groups: z
      .array(z.array(z.number().int()).readonly())
      .readonly()
      .describe('positions pulled at the same time, one a wrench')
      .optional(),
    rounds: z
      .array(
        z.strictObject({
          round: z.number().int(),
          targetShare: z.number().describe('share of the target'),
          order: z.array(z.number().int()).readonly(),
        }),
      )
      .readonly()
      .describe('each round with its share of the target')
      .optional(),
    quality: z
      .strictObject({
        pulls: z.number().int().describe('how often a wrench is put on'),
        walkM: z.number().describe('what the one who walks farthest walks, m'),
        minutes: z.number().describe('pulling and walking, min'),
        momentNm: z.number().describe('largest moment of the clamp forces about the centre at any time, N·m'),
        momentAtPull: z.number().int().describe('after how many pulls that is'),
        offCentreMm: z.number().describe('the same over the whole clamp force of the joint, mm'),
        gapMm: z
          .number()
          .describe('how much farther the joint is closed on one side than on the other then, mm')
          .optional(),
      })
      .describe('how good the order is; bolts do not take part in each other here')
      .optional(),
  }),
  example: {
    layout: 'circle',
    count: 16,
    diameterMm: 470,
    method: 'star',
    roundShares: [0.3, 0.7, 1],
    closingRounds: 1,
    targetN: 100_000,
    bedNPerMm: 500_000,
  },
  work: orderOf,
});
