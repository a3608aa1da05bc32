import { z } from 'zod';
import { consequenceClassSchema } from '../joint/consequence.ts';

/** When a wrench went wrong, as far as nobody saw it. */
export const ASSUMPTIONS = ['at-once', 'with-time', 'with-pulls'] as const;
export const assumptionSchema = z.enum(ASSUMPTIONS);
export type Assumption = z.infer<typeof assumptionSchema>;

/** A deviation found at a torque, with its standard uncertainty; percent of the reference value. */
export const errorPointSchema = z.strictObject({
  torqueNm: z.number().positive(),
  deviationPercent: z.number().gt(-100),
  standardUncertaintyPercent: z.number().min(0),
});
export type ErrorPoint = z.infer<typeof errorPointSchema>;

/** A wrench found off, and the span of time in which its pulls are in doubt. Appended, never changed. */
export const recallSchema = z.strictObject({
  id: z.uuid(),
  wrenchId: z.uuid(),
  raisedAt: z.iso.datetime({ precision: 3 }),
  by: z.string().trim().min(1).max(200),
  cause: z.discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('found-off'), calibrationId: z.uuid() }),
    z.strictObject({ kind: z.literal('dropped'), what: z.string().trim().min(3).max(2000) }),
  ]),
  /** Begin of the doubt: the last calibration or check that was good; absent: there was none. */
  goodAt: z.iso.datetime({ precision: 3 }).optional(),
  foundAt: z.iso.datetime({ precision: 3 }),
  /** How it was left by the last good calibration; absent: no deviation. */
  before: z.array(errorPointSchema).max(60),
  /** How it was found. */
  found: z.array(errorPointSchema).min(1).max(60),
});
export type Recall = z.infer<typeof recallSchema>;

/** A pull as a recall needs it. */
export const pullInDoubtSchema = z.strictObject({
  pullId: z.uuid(),
  wrenchId: z.uuid(),
  takenAt: z.iso.datetime({ precision: 3 }),
  job: z.strictObject({ id: z.uuid(), title: z.string() }),
  asset: z.string(),
  jointRef: z.string(),
  joint: z.string(),
  stage: z.number().int().positive(),
  round: z.number().int().positive(),
  position: z.number().int().positive(),
  consequenceClass: consequenceClassSchema.optional(),
  /** At the fastener, as it was judged. */
  torqueNm: z.number(),
  /** As the wrench showed it: an adapter lies between. */
  shownNm: z.number(),
  lowerNm: z.number().optional(),
  upperNm: z.number().optional(),
  /** Of the torque at the fastener, as it was judged, k = 2. */
  expandedUncertaintyNm: z.number().min(0).optional(),
});
export type PullInDoubt = z.infer<typeof pullInDoubtSchema>;

/** What was done about one pull of a recall. Appended, never changed; the last one stands. */
export const recheckSchema = z.strictObject({
  id: z.uuid(),
  recallId: z.uuid(),
  pullId: z.uuid(),
  at: z.iso.datetime({ precision: 3 }),
  by: z.string().trim().min(1).max(200),
  outcome: z.enum(['found-tight', 'tightened-again', 'fastener-replaced', 'left-as-it-is']),
  note: z.string().trim().max(2000),
});
export type Recheck = z.infer<typeof recheckSchema>;
