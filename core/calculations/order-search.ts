import { z } from 'zod';
import { orderSearchRequestSchema, orderSearch as searched } from '../layout/search/order-search.ts';
import { calculation, MAKER_FIRST } from './calculation.ts';
import { assumptionsField, ELASTIC_ONLY, evennessFields, INTERACTION_SOURCES } from './elastic-interaction.ts';

const positions = z.array(z.number().int()).readonly();

export const orderSearch = calculation({
  name: 'order-search',
  title: 'The order that leaves the forces most even within so many pulls',
  cautions: [
    MAKER_FIRST,
    ELASTIC_ONLY,
    'An order told by the maker or by a code also serves what is not reckoned here, such as flattening a gasket; this one does not replace it.',
  ],
  sources: [
    ...INTERACTION_SOURCES,
    'Kirkpatrick, Gelatt and Vecchi, Science 220 (1983) 671: simulated annealing (from memory)',
  ],
  input: orderSearchRequestSchema,
  output: z.strictObject({
    order: positions.describe('the best order, positions from 1, the same in each round'),
    rounds: z.number().int().describe('rounds'),
    pulls: z.number().int().describe('how often a wrench is put on'),
    finalN: z.array(z.number()).readonly().describe('forces by position in the end, N'),
    ...evennessFields,
    minOverTarget: z.number().describe('smallest final force over the target'),
    isExact: z.boolean().describe('all orders were tried, so that none is better'),
    tried: z.number().int().describe('orders tried'),
    byRounds: z
      .array(
        z.strictObject({
          rounds: z.number().int(),
          pulls: z.number().int(),
          spread: evennessFields.spread,
          starSpread: z.number().describe('spread of the star order for comparison'),
          circularSpread: z.number().describe('spread by the numbers for comparison'),
          order: positions,
        }),
      )
      .readonly()
      .describe('the best for each number of rounds, beside star and circular order'),
    assumptions: assumptionsField,
  }),
  example: {
    model: { kind: 'neighbours', arrangement: 'circle', count: 12, neighbour: 0.3, decay: -0.2 },
    targetN: 100_000,
    mostPulls: 36,
    draws: 3000,
  },
  isLong: true,
  work: searched,
});
