import { z } from 'zod';
import { ok } from '../failure/failure.ts';
import { fastener as fastenerData } from '../fastener/fastener.ts';
import { threadSchema } from '../fastener/own-thread.ts';
import { remarkSchema } from '../language/mechanics/remark.ts';
import { calculation, MAKER_FIRST } from './calculation.ts';

const millimetres = (what: string) => z.number().describe(`${what}, mm`);
const megapascals = (what: string) => z.number().describe(`${what}, MPa`).optional();
const newtons = (what: string) => z.number().describe(`${what}, N`).optional();

export const fastener = calculation({
  name: 'fastener',
  title: 'Geometry, strength and loads of a threaded fastener',
  cautions: [
    MAKER_FIRST,
    'Loads are what the standard asks of a new fastener without nut, bending or wear; they are no assembly target.',
  ],
  sources: [
    'ISO 68-1:1998, ISO 261:1998, ISO 262:1998 and ISO 724:1993: metric threads',
    'ISO 898-1:2013: stress area and strength of classes 4.6 to 12.9',
    'ASME B1.1-2003: Unified inch threads',
    'SAE J429: strength of grades 1 to 8.2',
    'ISO 3506-1: stainless steel A1 to A5; ASTM F3125, A193 B7, A320 L7, A574',
  ],
  input: z.strictObject({
    thread: threadSchema,
    propertyClass: z
      .string()
      .describe('such as 8.8 or A4-80 for metric threads, grade 5 or B7 for inch threads')
      .optional(),
  }),
  output: z.strictObject({
    thread: z.string().describe('designation as the standard writes it'),
    system: z.enum(['ISO metric', 'Unified']),
    series: z.enum(['coarse', 'fine', 'UNC', 'UNF', '8-UN', 'own']),
    majorDiameterMm: millimetres('basic major diameter d'),
    pitchMm: millimetres('pitch P'),
    pitchDiameterMm: millimetres('basic pitch diameter d2'),
    minorDiameterMm: millimetres('basic minor diameter d1'),
    rootDiameterMm: millimetres('root diameter d3 of a metric bolt').optional(),
    stressAreaMm2: z.number().describe('nominal stress area, mm²'),
    propertyClass: z.string().optional(),
    tensileStrengthMPa: megapascals('least tensile strength'),
    yieldStrengthMPa: megapascals('least yield strength or stress at 0.2 % non-proportional elongation'),
    proofStressMPa: megapascals('stress under proof load'),
    proofLoadN: newtons('proof load, unrounded'),
    tensileLoadN: newtons('least ultimate tensile load, unrounded'),
    workedOut: z.string().describe('which figures of an own bolt were worked out').optional(),
    notes: z.array(z.string()).readonly().describe('the remarks in English'),
    remarks: z.array(remarkSchema).readonly(),
  }),
  example: { thread: 'M10x1.25', propertyClass: '8.8' },
  work: ({ thread, propertyClass }) => {
    const data = fastenerData(thread, propertyClass);
    if (!data.ok) return data;
    const { workedOut, remarks, ...figures } = data.value;
    return ok({
      ...figures,
      ...(workedOut === undefined ? {} : { workedOut: workedOut.message }),
      notes: remarks.map(({ message }) => message),
      remarks: workedOut === undefined ? remarks : [workedOut, ...remarks],
    });
  },
});
