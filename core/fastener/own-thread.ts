import { z } from 'zod';

const millimetres = (what: string) => z.number().positive().max(1000).describe(`${what}, mm`);

/** Dimensions of a bolt that no shipped table has. What may be left out follows from the basic profile. */
export const boltDimensions = {
  /** Tells which property classes it can have. */
  system: z.enum(['ISO metric', 'Unified']).default('ISO metric').describe('whose profile and classes it has'),
  majorDiameterMm: millimetres('nominal diameter d'),
  pitchMm: millimetres('pitch P'),
  pitchDiameterMm: millimetres('pitch diameter d2; of the basic profile unless given').optional(),
  minorDiameterMm: millimetres('minor diameter d1; of the basic profile unless given').optional(),
  rootDiameterMm: millimetres('diameter at the root d3; of the basic profile unless given').optional(),
  stressAreaMm2: z
    .number()
    .positive()
    .max(1e6)
    .describe('stress area, mm²; worked out from the diameters unless given')
    .optional(),
  bearingOuterMm: millimetres('outer diameter of the face of head or nut; of the usual head unless given').optional(),
  holeMm: millimetres('hole that it goes through; medium unless given').optional(),
  shankDiameterMm: millimetres('diameter of a shank other than the thread').optional(),
};

const boltSchema = z.strictObject(boltDimensions);
export type BoltDimensions = z.infer<typeof boltSchema>;

export const ownThreadSchema = z.strictObject({
  designation: z.string().trim().min(1).max(200).describe('what it is called'),
  ...boltDimensions,
});
/** A bolt of one's own with all that is told of it. */
export type OwnThread = z.infer<typeof ownThreadSchema>;

/** A thread as a calculation takes it: the designation of a shipped one, or the dimensions of one's own. */
export const threadSchema = z
  .union([z.string(), ownThreadSchema])
  .describe('designation, such as M12, M12x1.25, 3/4-10 UNC, or the dimensions of a bolt of one’s own');
export type ThreadTold = z.infer<typeof threadSchema>;
