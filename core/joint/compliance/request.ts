import { z } from 'zod';
import { threadSchema } from '../../fastener/own-thread.ts';

const MODULUS_HIGHEST_MPA = 700_000;
const millimetres = (highest = 5000) => z.number().positive().max(highest);
const modulus = z.number().min(1).max(MODULUS_HIGHEST_MPA);

const material = z.string().min(1).max(80).optional().describe('such as carbon steel, grey cast iron, aluminium 6061');
const partModulus = modulus
  .optional()
  .describe('modulus of elasticity, MPa; that of the material, or 205 000, unless given');

export const layerSchema = z.strictObject({
  part: z.string().min(1).max(80).optional().describe('what the part is called'),
  thicknessMm: millimetres().describe('thickness, mm'),
  material,
  modulusMPa: partModulus,
  outerDiameterMm: millimetres(100_000)
    .optional()
    .describe('outer diameter of what surrounds the bolt, or twice the edge distance, mm; wide unless given'),
  holeMm: millimetres().optional().describe('hole in this part, mm; that of the joint unless given'),
});

const washerSchema = z.strictObject({
  under: z.enum(['head', 'nut']).describe('what lies on it'),
  thicknessMm: millimetres(100).describe('thickness, mm'),
  outerDiameterMm: millimetres().describe('outer diameter, mm'),
  holeMm: millimetres().optional().describe('hole, mm; that of the joint unless given'),
  material,
  modulusMPa: partModulus,
});

/** Fields that describe the joint's springs; other calculations take them too. */
export const jointShape = {
  thread: threadSchema,
  propertyClass: z.string().optional().describe('such as 8.8 or grade 5; here it tells the usual head of inch bolts'),
  jointType: z
    .enum(['through', 'tapped'])
    .default('through')
    .describe('through: bolt and nut; tapped: the thread is in the last part'),
  headForm: z
    .enum(['hexagon', 'socket', 'stud'])
    .default('hexagon')
    .describe('what holds at the other end: hexagon head, socket head, or a second nut on a stud'),
  shank: z
    .array(
      z.strictObject({
        lengthMm: millimetres().describe('length inside the grip, mm'),
        diameterMm: millimetres(1000).describe('diameter, mm'),
      }),
    )
    .max(10)
    .readonly()
    .default([])
    .describe('unthreaded sections inside the grip, from the head down; what they leave of the grip is thread'),
  layers: z
    .array(layerSchema)
    .min(1)
    .max(20)
    .readonly()
    .describe('clamped parts from head to nut, or to the tapped part, which itself is no layer'),
  washers: z
    .array(washerSchema)
    .max(6)
    .readonly()
    .default([])
    .describe('washers under head and nut; those of one side from the bearing face down'),
  gripMm: millimetres(20_000)
    .optional()
    .describe('clamped length as measured, mm; refused when layers and washers do not add up to it'),
  bearingOuterMm: millimetres(1000)
    .optional()
    .describe('outer diameter of the bearing circle under the head, mm; that of the usual head unless given'),
  nutBearingOuterMm: millimetres(1000)
    .optional()
    .describe('outer diameter of the bearing circle under the nut, mm; that of the head unless given'),
  holeMm: millimetres(1000).optional().describe('clearance hole, mm; medium unless given'),
  boltModulusMPa: modulus.default(205_000).describe('modulus of elasticity of the bolt, MPa'),
  nutModulusMPa: modulus
    .optional()
    .describe('modulus of the nut, or of the tapped part, MPa; that of the bolt unless given'),
  engagementMm: millimetres(1000).optional().describe('length over which bolt and nut thread engage, mm'),
  tappedDepthMm: millimetres()
    .optional()
    .describe('thickness of the tapped part, mm; as deep as it counts unless given'),
  loadIntroduction: z
    .number()
    .gt(0)
    .max(1)
    .default(1)
    .describe(
      'n, where the axial load enters: 1 under head and nut (the bolt feels most), less nearer to the interface',
    ),
};

export const complianceRequestSchema = z.strictObject(jointShape);
export type ComplianceRequest = z.infer<typeof complianceRequestSchema>;
