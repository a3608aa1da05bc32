import { z } from 'zod';
import { LUBRICATION_STATES } from '../joint/plausibility/lubrication.ts';
import { SLIP_KINDS } from '../joint/plausibility/slips.ts';
import { ASSESSMENTS, torquePlausibility as plausibilityOf } from '../joint/plausibility/torque-plausibility.ts';
import { UNITS } from '../quantity/unit.ts';
import { calculation, MAKER_FIRST } from './calculation.ts';
import { coefficient, tightenedFields } from './tightened-fields.ts';

const torqueUnits = UNITS.flatMap((unit) => (unit.quantity === 'torque' ? [unit.name] : []));

const ofYield = (what: string) => z.number().describe(`${what}, equivalent stress over yield strength`);

export const torquePlausibility = calculation({
  name: 'torque-plausibility',
  title: 'Whether a torque makes sense on its fastener, and the slip that would explain it if not',
  cautions: [
    MAKER_FIRST,
    'What makes sense is not yet right: a figure for another joint, or in a unit that differs little, goes through.',
  ],
  sources: [
    'VDI 2230-1:2015, R7 and table A5: stress in the shank, friction classes',
    'ISO 16047:2005: long form of the torque equation',
    'Usual targets between 50 and 100 % of the yield strength (common practice)',
  ],
  input: z.strictObject({
    ...tightenedFields,
    tensileStrengthMPa: z
      .number()
      .positive()
      .max(3000)
      .describe('tensile strength, MPa, in place of the class’s own')
      .optional(),
    materialName: z.string().max(200).describe('what the material is called where it has no class').optional(),
    torqueNm: z.number().positive().max(1e6).describe('tightening torque as it was understood, N·m'),
    typedUnit: z.enum(torqueUnits).describe('unit that the figure was typed in, where it was not N·m').optional(),
    prevailingTorqueNm: z
      .number()
      .min(0)
      .max(20_000)
      .default(0)
      .describe('torque of a locking nut before it clamps, N·m'),
    lubrication: z.enum(LUBRICATION_STATES).default('unknown').describe('of thread and bearing face'),
    lowestFriction: coefficient('the lowest that is credible').optional(),
    highestFriction: coefficient('the highest that is credible').optional(),
  }),
  output: z.strictObject({
    assessment: z.enum(ASSESSMENTS).describe('how the torque stands to what the fastener bears'),
    utilization: z.strictObject({
      lowest: ofYield('at the highest friction'),
      usual: ofYield('at usual friction'),
      highest: ofYield('at the lowest friction'),
    }),
    preloadLowestN: z.number().describe('at the highest friction, N'),
    preloadHighestN: z.number().describe('at the lowest friction, N'),
    friction: z.strictObject({
      lowest: coefficient('lowest'),
      usual: coefficient('usual'),
      highest: coefficient('highest'),
    }),
    fullTorqueNm: z.number().describe('torque that uses 90 % of the yield strength at usual friction, N·m'),
    propertyClass: z
      .string()
      .describe('class or material as it was read; the strongest of the size when none was told'),
    slips: z
      .array(
        z.strictObject({
          kind: z.enum(SLIP_KINDS),
          meant: z.string().describe('unit, lubrication, class or thread that was likely meant'),
          taken: z.string().describe('unit that the figure was taken in').optional(),
          torqueNm: z.number().describe('what the torque would then be, N·m'),
          utilization: ofYield('if it was this slip'),
          message: z.string(),
        }),
      )
      .readonly()
      .describe('likeliest first; empty for a usual torque'),
    message: z.string().describe('the finding in one or two sentences'),
  }),
  example: { thread: 'M12', propertyClass: '8.8', torqueNm: 114, typedUnit: 'lbf·ft', lubrication: 'lubricated' },
  work: plausibilityOf,
});
