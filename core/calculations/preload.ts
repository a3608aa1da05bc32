import { z } from 'zod';
import { preload as preloadOf } from '../joint/scatter/preload.ts';
import { DISTRIBUTIONS } from '../statistics/distribution.ts';
import { calculation, MAKER_FIRST } from './calculation.ts';
import { coefficient, editionField, tightenedAnswer, tightenedFields } from './tightened-fields.ts';

/** A figure, or the figure with what is known of its uncertainty. */
const told = (figure: z.ZodNumber) =>
  z.union([
    figure,
    z.strictObject({
      value: figure,
      standardUncertainty: z.number().min(0).describe('standard uncertainty, in the unit of the figure'),
      distribution: z.enum(DISTRIBUTIONS).default('normal').describe('how the quantity may lie about its value'),
    }),
  ]);

const newtons = (what: string) => z.number().describe(`${what}, N`);
const interval = (what: string) => z.tuple([z.number(), z.number()]).readonly().describe(`${what}, N`);
const probability = (what: string) => z.number().describe(`${what}, 0 to 1`).optional();

const scatter = {
  standardUncertaintyN: newtons('standard uncertainty'),
  interval95N: interval('interval that holds 95 %'),
  probabilityBelowN: probability('share below lowerPreloadN'),
  probabilityAboveN: probability('share above upperPreloadN'),
};

export const preload = calculation({
  name: 'preload',
  title: 'Preload that a torque brings, with its uncertainty and the shares outside of a window',
  cautions: [
    MAKER_FIRST,
    'The uncertainty is only as good as what is told of friction; guide values stand for no particular bolt.',
    'Settling, temperature and load after tightening are not in it.',
  ],
  sources: [
    'ISO 16047:2005: long form of the torque equation, solved for the preload',
    'JCGM 100:2008, clause 5: law of propagation of uncertainty',
    'JCGM 101:2008, clauses 7 and 8: propagation of distributions by drawing; when the law of propagation holds',
  ],
  input: z.strictObject({
    ...tightenedFields,
    torqueNm: told(z.number().positive().max(1e6)).describe(
      'tightening torque, N·m, with its uncertainty if it is known',
    ),
    threadFriction: told(coefficient('in the thread')).describe('coefficient of friction in the thread').optional(),
    bearingFriction: told(coefficient('under head or nut'))
      .describe('coefficient of friction under head or nut')
      .optional(),
    nutFactor: told(z.number().gt(0).max(5)).describe('K of T = K·d·F, instead of both frictions').optional(),
    prevailingTorqueNm: told(z.number().min(0).max(20_000))
      .default(0)
      .describe('torque of a locking nut before it clamps, N·m'),
    bearingOuterMm: told(z.number().positive().max(1000))
      .describe('outer diameter of the bearing face, mm; by the standard of the head when left out')
      .optional(),
    holeMm: told(z.number().positive().max(1000))
      .describe('inner diameter of the bearing face, mm; by ISO 273 when left out')
      .optional(),
    pitchDiameterMm: told(z.number().positive().max(1000))
      .describe('pitch diameter, mm; basic when left out')
      .optional(),
    sameLubricant: z
      .boolean()
      .default(false)
      .describe('thread and bearing face share one lubricant, so that their friction rises and falls together'),
    lowerPreloadN: z.number().positive().describe('least preload that is wanted, N').optional(),
    upperPreloadN: z.number().positive().describe('greatest preload that is wanted, N').optional(),
    draws: z
      .number()
      .int()
      .max(10_000_000)
      .refine((draws) => draws === 0 || draws >= 1000, 'Too few draws to tell an interval.')
      .default(1_000_000)
      .describe('how often is drawn, 1000 to 10 000 000; 0 for the law of propagation alone'),
    seed: z.number().int().min(0).max(4_294_967_295).default(1).describe('the same seed draws the same'),
    significantDigits: z
      .literal([1, 2])
      .default(1)
      .describe('digits of the uncertainty that mean something; decides when both ways disagree'),
    edition: editionField,
  }),
  output: z.strictObject({
    preloadN: newtons('preload at the figures given'),
    ...scatter,
    contributions: z
      .array(
        z.strictObject({
          quantity: z.string().describe('field of the input'),
          value: z.number(),
          standardUncertainty: z.number(),
          sensitivity: z.number().describe('newtons of preload for one unit of the quantity'),
          contributionN: newtons('what the quantity alone would give of the standard uncertainty'),
          share: z.number().describe('of the variance, all together 1'),
        }),
      )
      .readonly(),
    method: z.enum(['propagation', 'monte-carlo']).describe('where the figures above come from'),
    propagation: z.strictObject({ preloadN: newtons('preload'), ...scatter }),
    monteCarlo: z
      .strictObject({
        draws: z.number(),
        seed: z.number(),
        meanN: newtons('mean of the draws'),
        ...scatter,
        shortest95N: interval('shortest interval that holds 95 %'),
        histogram: z.strictObject({
          fromN: newtons('left end'),
          toN: newtons('right end'),
          counts: z.array(z.number()).readonly().describe('draws in bins of equal width'),
        }),
      })
      .optional(),
    agreement: z
      .strictObject({
        agree: z.boolean().describe('whether the law of propagation holds here'),
        toleranceN: newtons('how far the ends may lie apart'),
        lowDifferenceN: newtons('between the lower ends'),
        highDifferenceN: newtons('between the upper ends'),
      })
      .optional(),
    ...tightenedAnswer,
  }),
  example: {
    thread: 'M12',
    propertyClass: '8.8',
    torqueNm: { value: 80, standardUncertainty: 1.6, distribution: 'normal' },
    threadFriction: { value: 0.12, standardUncertainty: 0.012, distribution: 'rectangular' },
    bearingFriction: { value: 0.12, standardUncertainty: 0.012, distribution: 'rectangular' },
    lowerPreloadN: 35_000,
    upperPreloadN: 47_000,
  },
  work: preloadOf,
});
