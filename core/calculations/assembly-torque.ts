import { z } from 'zod';
import { BEARING_STANDARDS } from '../fastener/bearing-face.ts';
import { assemblyTorque as assemblyTorqueOf } from '../joint/torque/assembly-torque.ts';
import { EDITIONS } from '../joint/torque/shank-stress.ts';
import { calculation, MAKER_FIRST } from './calculation.ts';
import { coefficient, editionField, tightenedAnswer, tightenedFields } from './tightened-fields.ts';

export const assemblyTorque = calculation({
  name: 'assembly-torque',
  title: 'Preload and tightening torque of a fastener from its friction and how far its yield strength is used',
  cautions: [
    MAKER_FIRST,
    'Friction decides: a torque that is right for a dry bolt overloads a lubricated one. Test friction on the joint itself where lives depend on it.',
    'No safety is in the figure; scatter of friction and wrench, settling and load on the joint come on top.',
  ],
  sources: [
    'VDI 2230-1:2015, R7 and R13: preload at a share of the yield strength, assembly torque',
    'ISO 16047:2005: long form of the torque equation, mean bearing diameter, nut factor',
    'ISO 4014 bearing faces, ISO 273 holes, ASME B18.2.1, B18.2.6 and B18.2.8 for inch threads',
  ],
  input: z.strictObject({
    ...tightenedFields,
    threadFriction: coefficient('in the thread').optional(),
    bearingFriction: coefficient('under head or nut').optional(),
    nutFactor: z.number().gt(0).max(5).describe('K of T = K·d·F, instead of both frictions').optional(),
    utilization: z.number().gt(0).max(1).default(0.9).describe('share of the yield strength that is used, 0 to 1'),
    preloadN: z.number().positive().max(1e8).describe('preload wanted, N, instead of a utilization').optional(),
    prevailingTorqueNm: z
      .number()
      .min(0)
      .max(20_000)
      .default(0)
      .describe('torque of a locking nut before it clamps, N·m'),
    nutClass: z.string().describe('class of the nut, such as 8, 10, 05; checked against the bolt').optional(),
    edition: editionField,
  }),
  output: z.strictObject({
    preloadN: z.number().describe('N'),
    torqueNm: z.number().describe('tightening torque with the prevailing torque, N·m'),
    ...tightenedAnswer,
    shankTorqueNm: z.number().describe('torque that twists the shank, N·m'),
    bearingTorqueNm: z.number().describe('torque of the bearing face, N·m'),
    head: z.enum(BEARING_STANDARDS).describe('where the bearing face was taken from').optional(),
    bearingOuterMm: z.number().describe('mm'),
    holeMm: z.number().describe('mm'),
    edition: z.enum(EDITIONS),
  }),
  example: { thread: 'M12', propertyClass: '8.8', threadFriction: 0.12, bearingFriction: 0.12 },
  work: assemblyTorqueOf,
});
