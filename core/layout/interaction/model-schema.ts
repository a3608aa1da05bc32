import { z } from 'zod';
import { layoutSchema, MOST_POSITIONS } from '../layout.ts';

const count = z.number().int().min(1).max(MOST_POSITIONS).describe('bolts');
const sizeMm = (what: string) => z.number().positive().max(100_000).describe(`${what}, mm`);
const modulus = (what: string) => z.number().positive().max(1e7).describe(`${what}, MPa`);
const steel = modulus('modulus of elasticity of the flange or cover').default(200_000);
const poisson = z.number().min(0).max(0.49).default(0.3).describe('Poisson’s ratio');
const boltNPerMm = z
  .number()
  .positive()
  .max(1e10)
  .describe('stiffness of one bolt with its share of head, thread and nut, N/mm; compliance gives it');

/** Two equal flanges as rings, a gasket between them. */
const ring = z.strictObject({
  kind: z.literal('ring').describe('kind of model'),
  count,
  boltCircleMm: sizeMm('diameter of the bolt circle'),
  outerMm: sizeMm('outer diameter of the flange'),
  innerMm: sizeMm('inner diameter of the flange ring'),
  heightMm: sizeMm('thickness of the flange'),
  gasketOuterMm: sizeMm('outer diameter of the gasket face'),
  gasketInnerMm: sizeMm('inner diameter of the gasket face'),
  gasketThicknessMm: sizeMm('thickness of the gasket'),
  gasketMPa: modulus('modulus of the gasket when it is pressed first'),
  gasketUnloadingMPa: modulus(
    'modulus of the gasket once pressed, much stiffer; counts from the second round on',
  ).optional(),
  modulusMPa: steel,
  poisson,
  pipeWallMm: sizeMm(
    'wall of the pipe that the flange is welded to, of the flange’s bore; it holds the flange against twisting',
  ).optional(),
  hubN: z
    .number()
    .min(0)
    .max(1e12)
    .default(0)
    .describe(
      'moment with which anything else, such as a hub, holds the ring against twisting, for each mm and radian, N',
    ),
  boltNPerMm,
});

/** A cover as a plate on a soft bed. */
const plate = z.strictObject({
  kind: z.literal('plate').describe('kind of model'),
  layout: layoutSchema.describe('where the bolts are'),
  heightMm: sizeMm('thickness of the cover'),
  edgeMm: sizeMm(
    'from the outermost bolts to the free edge; left out, the cover is taken as endless, and far too stiff at its edge',
  ).optional(),
  bedFromEdgeMm: z
    .number()
    .min(0)
    .max(100_000)
    .describe('from the free edge to where the bed begins; left out, the bed begins at the edge, mm')
    .optional(),
  bedWidthMm: sizeMm('width of the bed from there inwards; left out, the whole inside lies on it').optional(),
  modulusMPa: steel,
  poisson,
  bedNPerMm3: z.number().positive().max(1e7).describe('stiffness of the bed under each mm², N/mm³'),
  bedUnloadingNPerMm3: z
    .number()
    .positive()
    .max(1e7)
    .describe('stiffness of the bed once pressed; counts from the second round on')
    .optional(),
  boltNPerMm,
});

/** A bar with free ends on a soft bed. */
const strip = z.strictObject({
  kind: z.literal('strip').describe('kind of model'),
  count,
  spacingMm: sizeMm('spacing of the bolts'),
  endMm: z.number().min(0).max(100_000).describe('from the last bolt to the free end, mm'),
  widthMm: sizeMm('width of the strip'),
  heightMm: sizeMm('thickness of the strip'),
  modulusMPa: steel,
  bedNPerMm3: z.number().positive().max(1e7).describe('stiffness of the bed under each mm², N/mm³'),
  bedUnloadingNPerMm3: z
    .number()
    .positive()
    .max(1e7)
    .describe('stiffness of the bed once pressed; counts from the second round on')
    .optional(),
  boltNPerMm,
});

/** Few figures, as a fit to measurements gives them. */
const neighbours = z.strictObject({
  kind: z.literal('neighbours').describe('kind of model'),
  arrangement: z.enum(['circle', 'line']).describe('how the bolts follow each other'),
  count,
  neighbour: z
    .number()
    .gt(-1)
    .lt(1)
    .describe('compliance between neighbours over that of one bolt, more than -1 and less than 1'),
  decay: z
    .number()
    .gt(-1)
    .lt(1)
    .describe('compliance of each farther neighbour over that of the one before, more than -1 and less than 1'),
});

export const modelSchema = z.discriminatedUnion('kind', [ring, plate, strip, neighbours]);
export type InteractionModel = z.infer<typeof modelSchema>;
export type RingModel = z.infer<typeof ring>;
export type PlateModel = z.infer<typeof plate>;
export type StripModel = z.infer<typeof strip>;
export type NeighbourModel = z.infer<typeof neighbours>;
