import { z } from 'zod';
import { jointShape, layerSchema } from '../compliance/request.ts';

const force = (what: string) => z.number().min(0).max(1e8).describe(`${what}, N`);
const stress = (what: string) => z.number().positive().max(10_000).optional().describe(`${what}, MPa`);
const millimetres = (what: string) => z.number().positive().max(5000).optional().describe(`${what}, mm`);
const expansion = z.number().min(0).max(1e-4).optional();

const checkedLayerSchema = layerSchema.extend({
  expansionPerK: expansion.describe('thermal expansion, 1/K; that of the material, or of carbon steel, unless given'),
});

export const jointCheckRequestSchema = z.strictObject({
  ...jointShape,
  propertyClass: z.string().optional().describe('such as 8.8, A4-80, grade 5; tells yield and tensile strength'),
  layers: z.array(checkedLayerSchema).min(1).max(20).readonly().describe('clamped parts from head to nut'),
  yieldStrengthMPa: stress('yield strength or R_p0.2, instead of a class'),
  tensileStrengthMPa: stress('tensile strength, instead of a class'),
  preloadN: force('preload aimed at').optional(),
  torqueNm: z.number().positive().max(20_000).optional().describe('torque aimed at, instead of the preload, N·m'),
  preloadIs: z
    .enum(['greatest', 'mean'])
    .default('greatest')
    .describe(
      'what the preload stands for: the greatest that scatter may bring, as in VDI 2230, or its mean; a torque gives the mean',
    ),
  tighteningFactor: z
    .number()
    .min(1)
    .max(10)
    .optional()
    .describe('α_A, greatest over least preload of the way of tightening'),
  tighteningMethod: z.string().optional().describe('a row of VDI 2230’s table instead; its larger factor is taken'),
  threadFriction: z
    .number()
    .gt(0)
    .max(1)
    .optional()
    .describe('coefficient of friction in the thread; 0.16 unless given'),
  bearingFriction: z.number().gt(0).max(1).optional().describe('coefficient of friction under what turns'),
  utilization: z.number().gt(0).max(1).default(0.9).describe('share of yield that assembly may use'),
  embeddingUm: z.number().min(0).max(1000).optional().describe('what all surfaces together give way, µm'),
  roughnessUm: z
    .number()
    .gt(0)
    .max(160)
    .default(25)
    .describe('Rz of the surfaces, from which embedding is estimated unless given, µm'),
  boltRiseK: z
    .number()
    .min(-273)
    .max(1500)
    .default(0)
    .describe('how much warmer the bolt is in service than at assembly, K'),
  partsRiseK: z.number().min(-273).max(1500).default(0).describe('the same of the clamped parts, K'),
  boltExpansionPerK: expansion.describe('thermal expansion of the bolt, 1/K; that of carbon steel unless given'),
  axialLoadN: force('greatest axial load on one bolt').default(0),
  axialLoadLowN: force('least axial load, where it alternates').optional(),
  shearLoadN: force('greatest load across one bolt, borne by friction').default(0),
  slipFriction: z.number().gt(0).max(1).optional().describe('coefficient of friction between the clamped parts'),
  shearPlanes: z.number().int().min(1).max(10).default(1).describe('interfaces that bear the load across'),
  slipSafety: z.number().min(1).max(5).default(1.2).describe('asked for against slip; 1.2 at rest, 1.8 alternating'),
  clampNeededN: force('clamp force asked for at each bolt in service').optional(),
  gasketAreaMm2: z.number().positive().max(1e7).optional().describe('gasket seated by one bolt, mm²'),
  gasketSeatingMPa: stress('stress that seats the gasket'),
  gasketServiceMPa: stress('stress that it needs in service'),
  gasketLimitMPa: stress('stress that it bears'),
  headPartGrade: z.string().optional().describe('material under the head, such as S355, EN-GJL-250, EN AW-6082'),
  headPressureLimitMPa: stress('pressure that the part under the head bears'),
  nutPartGrade: z.string().optional().describe('material under the nut'),
  nutPressureLimitMPa: stress('pressure that the part under the nut bears'),
  nutClass: z.string().optional().describe('such as 8, 10; metric nuts'),
  nutAcrossFlatsMm: millimetres('width across flats of the nut'),
  innerTensileMPa: stress('tensile strength of the nut or the tapped part'),
  innerShearMPa: stress('shear strength of the same; 0.6 of the tensile strength unless given'),
});
export type JointCheckRequest = z.infer<typeof jointCheckRequestSchema>;
