import { z } from 'zod';
import { referenceStandardSchema } from './reference-standard.ts';
import { directionSchema } from './wrench.ts';

/** Repeats at one torque in one direction. */
export const comparedPointSchema = z.strictObject({
  direction: directionSchema,
  /** Torque that was aimed at, or that a setting wrench was set to, N·m. */
  targetNm: z.number().positive(),
  /** What the wrench showed, N·m, one for each repeat; absent: the target each time. */
  indicatedNm: z.array(z.number()).max(50).optional(),
  /** What the reference showed, N·m, one for each repeat in the order in which they were taken. */
  referenceNm: z.array(z.number()).max(50),
});
export type ComparedPoint = z.infer<typeof comparedPointSchema>;

/** Spreads of mean values, greatest less least, N·m at the lowest point; absent: not measured (ISO 6789-2:2017, clause 6). */
export const measuredSpreadsSchema = z.strictObject({
  /** b_rep: series after taking the wrench off and putting it on again. */
  reproducibility: z.number().min(0).optional(),
  /** b_od: positions of the output drive of the wrench. */
  outputInterface: z.number().min(0).optional(),
  /** b_int: positions of the interface to the reference. */
  driveInterface: z.number().min(0).optional(),
  /** b_l: hand 10 mm before and behind its point. */
  leverVariation: z.number().min(0).optional(),
});
export type MeasuredSpreads = z.infer<typeof measuredSpreadsSchema>;

/** One run of comparisons of a wrench with a reference. */
export const comparisonSchema = z.strictObject({
  at: z.iso.datetime({ precision: 3 }),
  /** Loads to the highest torque before the first reading, in each direction. */
  preloadings: z.number().int().min(0).max(50),
  points: z.array(comparedPointSchema).min(1).max(60),
  spreads: measuredSpreadsSchema,
});
export type Comparison = z.infer<typeof comparisonSchema>;

/** A whole calibration: as found, and as left where the wrench was adjusted. Appended, never changed. */
export const calibrationSchema = z.strictObject({
  id: z.uuid(),
  wrenchId: z.uuid(),
  calibratedOn: z.iso.date(),
  dueOn: z.iso.date(),
  /** Pulls after which it is due though the day has not come; absent: as usual. */
  dueAfterPulls: z.number().int().positive().max(10_000_000).optional(),
  certificate: z.string().trim().min(1).max(100),
  by: z.string().trim().min(1).max(200),
  place: z.string().trim().max(200).optional(),
  /** ISO 6789-1:2017 asks for 18 to 28 °C, steady within 1 K, and at most 90 % relative humidity. */
  temperatureC: z.number().min(-20).max(60).optional(),
  humidityPercent: z.number().min(0).max(100).optional(),
  /** The reference as it stood then, copied. */
  reference: referenceStandardSchema,
  asFound: comparisonSchema,
  /** After adjustment; absent: it was not adjusted. */
  asLeft: comparisonSchema.optional(),
  note: z.string().trim().max(2000).optional(),
});
export type Calibration = z.infer<typeof calibrationSchema>;
