import { z } from 'zod';
import { jointShape } from '../compliance/request.ts';

const friction = (where: string) =>
  z.number().gt(0).max(1).optional().describe(`coefficient of friction ${where}, above 0 to 1`);
const force = (what: string) => z.number().min(0).max(1e8).optional().describe(`${what}, N`);
const stress = (what: string) => z.number().positive().max(5000).optional().describe(`${what}, MPa`);
const givingWay = (what: string) => z.number().positive().max(1).optional().describe(`${what}, mm/N`);

const toolPartSchema = z.strictObject({
  form: z.enum(['round', 'square', 'measured']).describe('round bar, square drive, or a stiffness that was measured'),
  acrossMm: z.number().positive().max(500).optional().describe('diameter, or across the flats of a square, mm'),
  boreMm: z.number().min(0).max(500).optional().describe('bore of a round bar, mm'),
  lengthMm: z.number().positive().max(10_000).optional().describe('length that twists, mm'),
  stiffnessNmPerDeg: z.number().positive().max(1e9).optional().describe('measured stiffness, N·m a degree'),
});

export const tighteningAngleRequestSchema = z.strictObject({
  ...jointShape,
  layers: jointShape.layers.optional().describe('clamped parts from head to nut; not needed with both compliances'),
  boltMmPerN: givingWay('compliance of the bolt, when it is known'),
  partsMmPerN: givingWay('compliance of the clamped parts, when it is known'),
  plasticLengthMm: z
    .number()
    .positive()
    .max(5000)
    .optional()
    .describe('thread that stretches past yield, mm; needed with known compliances, read off the joint otherwise'),
  propertyClass: z.string().optional().describe('such as 8.8; tells yield and tensile strength'),
  yieldStrengthMPa: stress('yield strength or R_p0.2, instead of a class'),
  tensileStrengthMPa: stress('tensile strength, instead of a class'),
  boltLaw: z
    .enum(['bilinear', 'smooth'])
    .default('bilinear')
    .describe('how the steel stretches past yield: straight lines, or a power law that bends before'),
  uniformStrain: z
    .number()
    .min(0.005)
    .max(0.3)
    .default(0.05)
    .describe('plastic strain at the tensile strength, an assumption'),
  threadFriction: friction('in the thread'),
  bearingFriction: friction('under what turns'),
  frictionLow: friction('at the lower end of what is credible'),
  frictionHigh: friction('at the upper end of what is credible'),
  prevailingTorqueNm: z.number().min(0).max(20_000).default(0).describe('torque of a locking nut before it seats, N·m'),
  snugTorqueNm: z.number().min(0).max(20_000).optional().describe('torque from which the angle is counted, N·m'),
  snugPreloadN: force('preload at that point, instead of its torque'),
  preloadN: force('preload wanted; the angle follows'),
  angleDeg: z.number().min(0).max(3600).optional().describe('angle from snug; the preload follows, degrees'),
  turnOfNut: z
    .enum(['RCSC', 'EN 1090-2'])
    .optional()
    .describe('takes the angle from a code’s table: RCSC turn-of-nut, or EN 1090-2 combined method, second step'),
  boltLengthMm: z
    .number()
    .positive()
    .max(5000)
    .optional()
    .describe('nominal length of the bolt, mm; RCSC counts by it'),
  slopedFaces: z
    .enum(['none', 'one', 'both'])
    .default('none')
    .describe('faces not square to the bolt, sloped up to 1:20; RCSC turns further'),
  toolParts: z
    .array(toolPartSchema)
    .max(10)
    .readonly()
    .default([])
    .describe('extensions and adapters that twist between wrench and fastener'),
});
export type TighteningAngleRequest = z.infer<typeof tighteningAngleRequestSchema>;
export type ToolPart = z.infer<typeof toolPartSchema>;
