import { z } from 'zod';
import { MOST_POSITIONS, orderSchema } from '../layout/layout.ts';

/** How a window was typed, kept beside the converted figures so that a record shows the manual's own numbers. */
export const typedWindowSchema = z.discriminatedUnion('form', [
  z.strictObject({ form: z.literal('percent'), target: z.string(), percent: z.string(), unit: z.string() }),
  z.strictObject({ form: z.literal('plus-minus'), target: z.string(), plusMinus: z.string(), unit: z.string() }),
  z.strictObject({ form: z.literal('limits'), lower: z.string(), upper: z.string(), unit: z.string() }),
]);
export type TypedWindow = z.infer<typeof typedWindowSchema>;

/** Lower limit, target and upper limit of torque at the fastener, N·m. */
export const torqueWindowSchema = z.strictObject({
  lowerNm: z.number().min(0),
  targetNm: z.number().positive(),
  upperNm: z.number().positive(),
  typed: typedWindowSchema,
});
export type TorqueWindow = z.infer<typeof torqueWindowSchema>;

/** Lower limit, target and upper limit of turning at the fastener, degrees. */
export const angleWindowSchema = z.strictObject({
  lowerDeg: z.number().min(0),
  targetDeg: z.number().positive(),
  upperDeg: z.number().positive(),
  typed: typedWindowSchema,
});
export type AngleWindow = z.infer<typeof angleWindowSchema>;

export const STAGE_KINDS = ['snug', 'torque', 'angle', 'torque-and-angle', 'check', 'loosen'] as const;
export type StageKind = (typeof STAGE_KINDS)[number];

/** A plan may ask more of a pull than the joint keeps, because neighbours take some of it again. */
export const MOST_SHARE = 3;

/** A round that closes the work: who moves no further than this is still. */
export const closingSchema = z.strictObject({ stillDeg: z.number().positive().max(90) });
export type Closing = z.infer<typeof closingSchema>;

/** One pass over all positions within a stage; `share` scales the stage's torque window. */
export const roundSchema = z.strictObject({
  share: z.number().gt(0).max(1),
  order: orderSchema,
  /** Share of the window for each position by its number, in place of `share`, which then says what the round ends at. */
  positionShares: z.array(z.number().gt(0).max(MOST_SHARE)).min(1).max(MOST_POSITIONS).optional(),
  /** It is gone round again until nothing moves; rounds after one in which nothing moved are left out. */
  closing: closingSchema.optional(),
});
export type Round = z.infer<typeof roundSchema>;

/** What is done to every position before the next stage begins. */
export const stageSchema = z.strictObject({
  kind: z.enum(STAGE_KINDS),
  torque: torqueWindowSchema.optional(),
  angle: angleWindowSchema.optional(),
  /** Torque at the fastener from which the wrench counts angle, N·m. */
  angleFromNm: z.number().min(0).optional(),
  /** Turning faster than this makes an angle doubtful, degrees a second. */
  speedLimitDegPerS: z.number().positive().optional(),
  rounds: z.array(roundSchema).min(1).max(20),
});
export type Stage = z.infer<typeof stageSchema>;
