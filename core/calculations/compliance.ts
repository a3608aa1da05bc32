import { z } from 'zod';
import { complianceOf } from '../joint/compliance/compliance.ts';
import { complianceRequestSchema } from '../joint/compliance/request.ts';
import { stepShownSchema } from '../joint/step-shown.ts';
import { warningSchema } from '../joint/warning.ts';
import { remarkSchema } from '../language/mechanics/remark.ts';
import { calculation, MAKER_FIRST } from './calculation.ts';

const givingWay = (what: string) => z.number().describe(`${what}, mm/N`);
const stiffness = (what: string) => z.number().describe(`${what}, N/mm`);
const shareOfWhole = z.number().describe('share of the whole, 0 to 1');

const boltSection = z.strictObject({
  part: z.enum(['head', 'shank', 'thread', 'engaged thread', 'nut', 'tapped part']),
  lengthMm: z.number(),
  diameterMm: z.number(),
  areaMm2: z.number(),
  modulusMPa: z.number(),
  complianceMmPerN: z.number(),
  shareOfWhole,
});

const partSection = z.strictObject({
  part: z.string(),
  shape: z.enum(['cone', 'sleeve']),
  lengthMm: z.number(),
  fromMm: z.number().describe('outer diameter where the force comes in, mm'),
  toMm: z.number().describe('outer diameter where it goes out, mm'),
  holeMm: z.number(),
  modulusMPa: z.number(),
  complianceMmPerN: z.number(),
  shareOfWhole,
});

const output = z.strictObject({
  boltMmPerN: givingWay('δ_S of the bolt'),
  partsMmPerN: givingWay('δ_P of the clamped parts'),
  loadFactor: z.number().describe('Φ_n, share of an axial load that the bolt feels'),
  boltNPerMm: stiffness('stiffness of the bolt'),
  partsNPerMm: stiffness('stiffness of the clamped parts'),
  jointNPerMm: stiffness('of both in a row, as the nut feels them when it is turned'),
  gripMm: z.number().describe('clamped length with washers, mm'),
  bearingOuterMm: z.number().describe('bearing circle under the head that was counted with, mm'),
  holeMm: z.number().describe('hole that was counted with, mm'),
  cone: z.strictObject({
    tangent: z.number().describe('tan φ'),
    slenderness: z.number().describe('β_L = l_K/d_W'),
    width: z.number().describe('y = D_A/d_W'),
    limitDiameterMm: z.number().describe('D_A,Gr, from which on the cone is whole, mm'),
    form: z.enum(['cone', 'cone-and-sleeve', 'sleeve']),
  }),
  boltSections: z.array(boltSection).readonly(),
  partSections: z.array(partSection).readonly(),
  shigley: z
    .strictObject({ boltMmPerN: z.number(), partsMmPerN: z.number(), loadFactor: z.number() })
    .describe('the same by the textbook: shank and thread within the grip, frusta of 30°'),
  exponentialFit: z
    .strictObject({ material: z.string(), partsMmPerN: z.number() })
    .optional()
    .describe('parts of one material by the exponential fit to finite elements'),
  comparison: z
    .strictObject({ bolt: z.number(), parts: z.number(), loadFactor: z.number() })
    .describe('Shigley’s figures over VDI’s'),
  assumptions: z.array(remarkSchema).readonly(),
  warnings: z.array(warningSchema).readonly(),
  steps: z.array(stepShownSchema).readonly(),
});

export const compliance = calculation({
  name: 'compliance',
  title: 'How bolt and clamped parts give way, and which share of a load the bolt feels',
  cautions: [
    MAKER_FIRST,
    'Holds for a joint clamped and loaded in line with the bolt. The two methods differ by up to 30\u00a0% on the parts; where that decides, measure.',
  ],
  sources: [
    'VDI 2230-1:2015, 5.1.1, 5.1.2, 5.3: sections of the bolt, deformation cone-and-sleeve, load factor (formulas from a secondary source)',
    'Shigley’s Mechanical Engineering Design, 9th ed., 8-4 and 8-5, tables 8-7 and 8-8: frusta, exponential fit',
    'Lehnhoff, Ko and McKay, J. Mech. Des. 116 (1994) 550, abstract: 16 to 30 % between textbook and finite elements',
  ],
  input: complianceRequestSchema,
  output,
  example: {
    thread: 'M12',
    shank: [{ lengthMm: 20, diameterMm: 12 }],
    layers: [
      { thicknessMm: 25, outerDiameterMm: 40 },
      { thicknessMm: 15, outerDiameterMm: 40 },
    ],
    bearingOuterMm: 16.63,
    holeMm: 13.5,
  },
  work: complianceOf,
});
