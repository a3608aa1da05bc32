import { z } from 'zod';
import { type Expectation, expectationSchema } from './expectation.ts';
import type { ReadCurve } from './figures.ts';

/** The limits and the target of a pull; angle counts from `angleFromNm`, or from where the trace begins. */
export const traceWindowSchema = z.strictObject({
  lowerNm: z.number().min(0).optional().describe('lower limit of torque, N·m'),
  targetNm: z.number().positive().optional().describe('target of torque, N·m'),
  upperNm: z.number().positive().optional().describe('upper limit of torque, N·m'),
  lowerDeg: z.number().min(0).optional().describe('lower limit of the angle, degrees'),
  targetDeg: z.number().positive().optional().describe('target of the angle, degrees'),
  upperDeg: z.number().positive().optional().describe('upper limit of the angle, degrees'),
  angleFromNm: z.number().min(0).optional().describe('torque from which the angle is counted, N·m'),
});
export type TraceWindow = z.infer<typeof traceWindowSchema>;

/** How a trace is read and what it is held to. */
export const traceOptionsSchema = z.strictObject({
  yieldFraction: z
    .number()
    .min(0.1)
    .max(0.9)
    .default(0.5)
    .describe('slope at yield as a share of the elastic slope: 0.5 is usual, 0.25 to 0.75 in use'),
  yieldOffsetDeg: z
    .number()
    .positive()
    .max(360)
    .optional()
    .describe('offset from the elastic line that is told as yield, degrees; left out: a tenth of the elastic turning'),
  slopeWindowDeg: z
    .number()
    .positive()
    .max(360)
    .optional()
    .describe('window of the local slope, degrees; left out: as wide as the noise wants it'),
  speedLimitDegPerS: z
    .number()
    .positive()
    .default(30)
    .describe('fastest turning of a sound pull, degrees a second; 30 is common practice for angle'),
  startsAtNm: z
    .number()
    .min(0)
    .default(0)
    .describe('torque to which the fastener had been tightened before this pull, N·m'),
  prevailingUpToNm: z
    .number()
    .min(0)
    .optional()
    .describe('highest torque that a sound fastener takes before it clamps: it forms its thread or locks, N·m'),
  intendsYield: z.boolean().default(false).describe('tightened into yield on purpose'),
  expected: expectationSchema.optional().describe('what a sound pull of this joint looks like'),
});
export type TraceOptions = z.infer<typeof traceOptionsSchema>;

/** What a rule looks at. */
export interface Evidence extends ReadCurve {
  readonly window: TraceWindow;
  readonly options: TraceOptions;
  readonly expected: Expectation | undefined;
  /** Torque that the pull was to reach, or, where nobody says, the one it reached, N·m. */
  readonly wantedNm: number;
  /** Torque at which the fastener stood before, as far as the curve agrees that it was tight, N·m. */
  readonly startedNm: number;
}
