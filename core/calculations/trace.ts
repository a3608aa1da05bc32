import { z } from 'zod';
import { ok } from '../failure/failure.ts';
import { sayReason } from '../language/reasons.ts';
import { analyseTrace, type TraceAnalysis } from '../trace/analyse.ts';
import { type Finding, findingSchema } from '../trace/finding.ts';
import { traceOptionsSchema, traceWindowSchema } from '../trace/judged-by.ts';
import { typed } from '../trace/samples.ts';
import { traceReason } from '../verdict/verdict.ts';
import { calculation, MAKER_FIRST } from './calculation.ts';
import { type SamplesTyped, samplesFields, unequal } from './trace-samples.ts';

const point = z.strictObject({
  index: z.number().int().describe('number of the sample, from 0'),
  torqueNm: z.number(),
  angleDeg: z.number(),
});

const saidFinding = findingSchema.extend({
  kind: findingSchema.shape.kind.describe('what was found'),
  confidence: findingSchema.shape.confidence.describe('0 to 1; a half where it only just shows'),
  atDeg: findingSchema.shape.atDeg.describe('where on the curve it shows, degrees'),
  code: z.string().describe('code of the sentence in the catalogues'),
  why: z.string().describe('why, one sentence'),
});

const output = z.strictObject({
  kind: z.enum(['tightening', 'loosening']),
  peakTorqueNm: z.number().describe('largest torque, N·m'),
  finalTorqueNm: z.number().describe('torque where forward turning ended, N·m'),
  finalAngleDeg: z.number().describe('angle where forward turning ended, strokes joined, degrees'),
  snug: point.optional().describe('where the slope passes half of the elastic one and stays above'),
  slopeNmPerDeg: z.number().optional().describe('elastic slope by robust regression, N·m a degree'),
  slopeStandardError: z.number().optional(),
  elasticOriginDeg: z.number().optional().describe('elastic line carried back to zero torque, degrees'),
  elasticOriginStandardError: z.number().optional(),
  clampOriginDeg: z.number().optional().describe('elastic line carried back to the prevailing torque, degrees'),
  angleFromSnugDeg: z.number().optional(),
  yield: point.optional().describe('where the slope has fallen to its share of the elastic one'),
  offsetYield: point.optional().describe('where torque lies below the elastic line by the offset'),
  prevailingTorqueNm: z.number().describe('median torque of the run-down; 0 where none is seen, N·m'),
  highestPrevailingNm: z.number(),
  runDownDeg: z.number().describe('turning of the run-down, degrees'),
  torqueAtFirstTurnNm: z.number(),
  reseatStrokes: z.number().int().describe('how often torque was let go and taken up again'),
  dropOuts: z.number().int(),
  maxRateDegPerS: z.number().optional().describe('fastest turning held for 50 ms, degrees a second'),
  jointRate: z
    .strictObject({ from10Deg: z.number(), from50Deg: z.number(), kind: z.enum(['hard', 'medium', 'soft']) })
    .optional()
    .describe('turning from 10 and from 50 % to the whole of the target, or of the peak'),
  stickSlip: z
    .strictObject({ share: z.number(), periodDeg: z.number(), fromDeg: z.number(), meanNm: z.number() })
    .optional(),
  loosening: z
    .strictObject({ breakAway: point, runOutNm: z.number(), slips: z.number().int() })
    .optional()
    .describe('of a loosening, torque as a positive figure'),
  findings: z.array(saidFinding).readonly().describe('what speaks against the pull'),
});

const say = (finding: Finding) => {
  const code = traceReason(finding.kind);
  const { quantity, value, limit } = finding;
  return { ...finding, code, why: sayReason({ code, quantity, value, limit }, 'en', 'N·m') };
};

function answerOf(analysis: TraceAnalysis, samples: SamplesTyped): z.infer<typeof output> {
  if (analysis.kind === 'tightening')
    return { kind: 'tightening', ...analysis.figures, findings: analysis.findings.map(say) };
  const { loosening } = analysis;
  const { torqueNm, angleDeg } = loosening.breakAway;
  const found: Finding = {
    kind: 'loosening',
    confidence: 1,
    atDeg: angleDeg,
    quantity: 'torque',
    value: torqueNm,
    limit: 0,
  };
  return {
    kind: 'loosening',
    peakTorqueNm: -torqueNm,
    finalTorqueNm: samples.torqueNm.at(-1) ?? 0,
    finalAngleDeg: samples.angleDeg.at(-1) ?? 0,
    prevailingTorqueNm: 0,
    highestPrevailingNm: 0,
    runDownDeg: 0,
    torqueAtFirstTurnNm: 0,
    reseatStrokes: 0,
    dropOuts: 0,
    loosening,
    findings: [say(found)],
  };
}

/** A made curve: 4 N·m to 10°, parts coming together to 20°, then 2 N·m a degree. */
const EXAMPLE_ANGLES = Array.from({ length: 61 }, (_, i) => i);
const exampleTorque = (deg: number): number => {
  if (deg <= 10) return 4;
  return deg <= 20 ? 4 + (deg - 10) ** 2 / 10 : 14 + 2 * (deg - 20);
};

export const trace = calculation({
  name: 'trace',
  title: 'What a curve of torque over angle says: snug, slope, yield, and what speaks against the pull',
  cautions: [
    MAKER_FIRST,
    'A curve without a finding does not prove the clamp force; a finding is a reason to look, not a proof of the fault.',
    'Soft, rough and very short joints bend the rules; hold a joint to its own accepted curves as soon as there are some.',
  ],
  sources: [
    'ISO 5393:2017: joint rate, hard and soft (by secondary accounts)',
    'Patents US 4 104 780, US 3 974 883, US 4 894 767 (abstracts): yield by gradient and by offset',
    'Huber, Ann. Math. Statist. 35 (1964) 73: robust line',
    'Snug by change of slope, findings and their bounds: common practice',
  ],
  input: z.strictObject({
    ...samplesFields,
    options: traceOptionsSchema.prefault({}).describe('how the trace is read and what it is held to'),
    window: traceWindowSchema.default({}).describe('limits and target of the pull, where they are known'),
  }),
  output,
  example: {
    angleDeg: EXAMPLE_ANGLES,
    torqueNm: EXAMPLE_ANGLES.map(exampleTorque),
    window: { lowerNm: 85, targetNm: 90, upperNm: 100 },
  },
  work: ({ options, window, ...samples }) =>
    unequal(samples) ?? ok(answerOf(analyseTrace(typed(samples), options, window), samples)),
});
