import { z } from 'zod';
import { stepShownSchema } from '../joint/step-shown.ts';
import { contributionSchema } from '../wrench/budget.ts';
import { evaluateCalibration } from '../wrench/evaluate-calibration.ts';
import { calculation } from './calculation.ts';
import { warningsField } from './tightened-fields.ts';

const newtonMetres = (what: string) => z.number().describe(`${what}, N·m`);
const percent = (what: string) => z.number().describe(`${what}, percent of the reference value`);
const spread = (letter: string, what: string) =>
  z
    .number()
    .min(0)
    .describe(
      `${letter}: ${what}; greatest less least mean, N·m at the lowest point; 1 % or 0.5 % is assumed when left out`,
    )
    .optional();

export const wrenchCalibration = calculation({
  name: 'wrench-calibration',
  title: 'Deviations of a torque wrench from a reference, with the uncertainty budget of its calibration',
  cautions: [
    'A certificate after ISO 6789-2 wants a calibrated reference, the conditions of the standard and somebody who knows the work.',
    'What was not measured is assumed and marked; measure it before the figure decides anything.',
  ],
  sources: [
    'ISO 6789-1:2017: classes, permissible deviations, deviation referred to the reference value (from memory)',
    'ISO 6789-2:2017, clauses 5 to 7: relative measurement error, contributions, interval W′ (list of contributions read, formulas from memory)',
    'JCGM 100:2008: evaluation and combination of uncertainties',
  ],
  input: z.strictObject({
    type: z.enum(['I', 'II']).describe('I indicates, II is set'),
    class: z.string().min(1).max(2).describe('letter of ISO 6789-1, A to E for type I, A to G for type II'),
    maxTorqueNm: z.number().positive().max(20_000).describe('greatest torque of the wrench, N·m'),
    resolutionNm: z.number().min(0).max(1000).describe('step of scale or display, N·m; 0 where nothing is read off'),
    points: z
      .array(
        z.strictObject({
          targetNm: z.number().positive().max(20_000).describe('torque that was aimed at or set, N·m'),
          indicatedNm: z
            .array(z.number())
            .max(50)
            .describe('what the wrench showed, N·m; the target each time when left out')
            .optional(),
          referenceNm: z.array(z.number()).max(50).describe('what the reference showed, N·m'),
        }),
      )
      .min(1)
      .max(20)
      .describe('targets that rise, each with its repeats'),
    referenceUncertaintyPercent: z
      .number()
      .min(0)
      .max(100)
      .describe('expanded uncertainty of the reference, k = 2, percent; 1 is assumed when left out')
      .optional(),
    referenceBiasPercent: z
      .number()
      .min(-100)
      .max(100)
      .describe('known error of the reference that is not corrected, percent')
      .optional(),
    reproducibility: spread('b_rep', 'series after taking the wrench off and on again'),
    driveInterface: spread('b_int', 'positions of the interface to the reference'),
    outputInterface: spread('b_od', 'positions of the output drive'),
    leverVariation: spread('b_l', 'hand 10 mm before and behind its point'),
  }),
  output: z.strictObject({
    permissibleDeviationPercent: percent('how far a single deviation may go'),
    points: z
      .array(
        z.strictObject({
          targetNm: newtonMetres('target'),
          meanReferenceNm: newtonMetres('mean of the reference'),
          deviationsPercent: z.array(z.number()).readonly().describe('(shown − reference)·100/reference'),
          meanDeviationPercent: percent('mean deviation'),
          repeatabilityPercent: percent('standard deviation of the repeats'),
          standardUncertaintyPercent: percent('combined standard uncertainty w'),
          expandedUncertaintyPercent: percent('W = 2·w'),
          uncertaintyIntervalPercent: percent('W′ = |mean deviation| + W + |bias of the reference|'),
          conforms: z.boolean().describe('every single deviation is permissible'),
          budget: z.array(contributionSchema).readonly().describe('contributions at this point'),
        }),
      )
      .readonly(),
    conforms: z.boolean().describe('all points conform'),
    budget: z.array(contributionSchema).readonly().describe('contributions at the point with the greatest uncertainty'),
    budgetAtNm: newtonMetres('target of that point'),
    warnings: warningsField,
    steps: z.array(stepShownSchema).readonly().describe('the working at that point, to be checked by hand'),
  }),
  example: {
    type: 'II',
    class: 'A',
    maxTorqueNm: 200,
    resolutionNm: 1,
    points: [
      { targetNm: 40, referenceNm: [40.3, 40.5, 40.2, 40.4, 40.4] },
      { targetNm: 120, referenceNm: [120.9, 121.3, 120.8, 121.1, 121.2] },
      { targetNm: 200, referenceNm: [199.1, 199.8, 199.4, 199.6, 199.2] },
    ],
    referenceUncertaintyPercent: 0.5,
    reproducibility: 0.2,
    driveInterface: 0.1,
    outputInterface: 0.15,
    leverVariation: 0.25,
  },
  work: evaluateCalibration,
});
