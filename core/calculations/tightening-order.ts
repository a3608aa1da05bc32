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
  ],
  input: orderRequestSchema,
  output: z.strictObject({ order: z.array(z.number().int()).readonly().describe('positions from 1, each once') }),
  example: { layout: 'circle', count: 8, method: 'star' },
  work: orderOf,
});
