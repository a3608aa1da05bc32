import { z } from 'zod';
import { tighteningAngleRequestSchema } from '../joint/angle/request.ts';
import { tighteningAngleOf } from '../joint/angle/tightening-angle.ts';
import { stepShownSchema } from '../joint/step-shown.ts';
import { warningSchema } from '../joint/warning.ts';
import { remarkSchema } from '../language/mechanics/remark.ts';
import { calculation, MAKER_FIRST } from './calculation.ts';

const degrees = (what: string) => z.number().describe(`${what}, degrees`);
const newtons = (what: string) => z.number().describe(`${what}, N`);
const newtonMetres = (what: string) => z.number().describe(`${what}, N·m`);

const windowSchema = z.strictObject({
  lowNm: newtonMetres('least torque expected at the end'),
  highNm: newtonMetres('greatest torque expected at the end'),
  preloadLowN: newtons('least preload'),
  preloadHighN: newtons('greatest preload'),
  breaks: z.boolean().describe('whether the bolt would break within the range of friction'),
});

const codeSchema = z.strictObject({
  standard: z.enum(['RCSC', 'EN 1090-2']),
  angleDeg: degrees('turn of the code’s table').optional(),
  row: z.string().describe('row of the table, by length in diameters').optional(),
  preloadN: newtons('preload that this turn is reckoned to reach').optional(),
  neededN: newtons('preload that the code asks for').optional(),
  reaches: z.boolean().optional(),
  note: remarkSchema,
  source: z.string(),
});

const pointSchema = z.strictObject({
  angleDeg: degrees('from snug'),
  preloadN: newtons('preload'),
  torqueNm: newtonMetres('torque').optional(),
});

const output = z.strictObject({
  angleDeg: degrees('angle at the fastener from snug'),
  snugPreloadN: newtons('preload at snug'),
  preloadN: newtons('preload at the end'),
  slopeNPerDeg: z.number().describe('preload that a degree brings while all is elastic, N a degree'),
  boltAloneAngleDeg: degrees('turn that would stretch the bolt alone, over rigid parts').optional(),
  isPastYield: z.boolean(),
  yieldPreloadN: newtons('preload at which the bolt yields while it is tightened').optional(),
  yieldAngleDeg: degrees('angle from snug at which it yields').optional(),
  ultimatePreloadN: newtons('preload at which it breaks').optional(),
  stayingMm: z.number().describe('stretch that stays, mm'),
  snugTorqueNm: newtonMetres('torque at snug').optional(),
  finalTorqueNm: newtonMetres('torque expected at the end').optional(),
  torqueWindow: windowSchema.optional().describe('what to expect over the range of friction'),
  windUpDeg: degrees('how far the tool twists between snug and end').optional(),
  wrenchAngleDeg: degrees('what the wrench must turn, twist included').optional(),
  codes: z.array(codeSchema).readonly().describe('turns that codes ask for, as a check'),
  curve: z.array(pointSchema).readonly().describe('preload and torque over the angle, as expected'),
  assumptions: z.array(remarkSchema).readonly(),
  warnings: z.array(warningSchema).readonly(),
  steps: z.array(stepShownSchema).readonly(),
});

export const tighteningAngle = calculation({
  name: 'tightening-angle',
  title: 'The angle from snug to a preload, elastic and past yield, and the final torque to expect',
  cautions: [
    MAKER_FIRST,
    'Past yield the figure rests on an assumed law of the steel; an angle for such a joint is found by tests with the same parts.',
    'Structural bolts are tightened by licensed people to the code in force, checked on the day with bolts of the same lot.',
  ],
  sources: [
    'VDI 2230-1:2015, 5.1 and 5.5.2: compliances in a row, yield under tension and torsion (formulas from a secondary source)',
    'ISO 16047:2005: torque and preload, long form',
    'RCSC Specification for Structural Joints Using High-Strength Bolts, tables 8.1 and 8.2 (secondary table)',
    'EN 1090-2, 8.5: combined method and preload F_p,C (secondary table)',
    'MIL-HDBK-60: turn that stretches the bolt alone (formula from a secondary source)',
    'Ramberg and Osgood, NACA TN 902 (1943): power law of stress and strain',
  ],
  input: tighteningAngleRequestSchema,
  output,
  example: {
    thread: 'M24',
    propertyClass: '10.9',
    shank: [{ lengthMm: 35, diameterMm: 24 }],
    layers: [
      { thicknessMm: 40, outerDiameterMm: 80 },
      { thicknessMm: 40, outerDiameterMm: 80 },
    ],
    threadFriction: 0.12,
    bearingFriction: 0.12,
    frictionLow: 0.1,
    frictionHigh: 0.16,
    snugTorqueNm: 250,
    preloadN: 200_000,
    toolParts: [{ form: 'round', acrossMm: 25.4, lengthMm: 200 }],
  },
  work: tighteningAngleOf,
});
