import { z } from 'zod';
import { BEARING_STANDARDS, HOLE_SERIES } from '../fastener/bearing-face.ts';
import { threadSchema } from '../fastener/own-thread.ts';
import { stepShownSchema } from '../joint/step-shown.ts';
import { EDITIONS } from '../joint/torque/shank-stress.ts';
import { warningSchema } from '../joint/warning.ts';

/** A coefficient of friction; nothing turns without any, and above 1 it is a slip of the decimal sign. */
export const coefficient = (what: string) => z.number().gt(0).max(1).describe(`${what}, coefficient of friction`);

const diameter = (what: string) => z.number().positive().max(1000).describe(`${what}, mm`);

/** Fields that tell of the fastener and of the ring that it turns on. */
export const tightenedFields = {
  thread: threadSchema,
  propertyClass: z.string().describe('such as 8.8, A4-80, grade 5, B7').optional(),
  proofStressMPa: z
    .number()
    .positive()
    .max(3000)
    .describe('0.2 % proof stress (yield strength), MPa, in place of the class’s own')
    .optional(),
  head: z
    .enum(BEARING_STANDARDS)
    .describe('standard of the head or nut that turns; ISO 4014 for metric threads when left out')
    .optional(),
  bearingOuterMm: diameter('outer diameter of the bearing face; by the standard of the head when left out').optional(),
  holeSeries: z.enum(HOLE_SERIES).describe('series of ISO 273; medium when left out').optional(),
  holeMm: diameter('inner diameter of the bearing face, as a rule the hole; by ISO 273 when left out').optional(),
  shankDiameterMm: diameter('diameter of a shank thinner than the thread; left out when there is none').optional(),
};

export const editionField = z
  .enum(EDITIONS)
  .default('VDI 2230:2001')
  .describe('how the torsion of the shank is reckoned; 2001 stands for the later editions as well');

export const warningsField = z.array(warningSchema).readonly().describe('what is doubtful in the input');

const share = (what: string) => z.number().describe(`${what}, fraction of the clamping torque`);

/** What a torque and its preload are of the fastener, whichever of them was asked for. */
export const tightenedAnswer = {
  nutFactor: z.number().describe('K of T = K·d·F, without the prevailing torque'),
  shares: z.strictObject({
    pitch: share('pitch'),
    thread: share('thread friction'),
    bearing: share('bearing friction'),
  }),
  vonMisesMPa: z.number().describe('equivalent stress in the shank, MPa'),
  tensionMPa: z.number().describe('MPa'),
  torsionMPa: z.number().describe('MPa'),
  utilization: z.number().describe('equivalent stress over yield strength').optional(),
  warnings: warningsField,
  steps: z.array(stepShownSchema).readonly().describe('the working, to be checked by hand'),
};
