import { z } from 'zod';

/** What the last calibration of a wrench says; the whole certificate is kept elsewhere. */
export const calibrationSummarySchema = z.strictObject({
  calibratedOn: z.iso.date(),
  dueOn: z.iso.date(),
  certificate: z.string().min(1),
  by: z.string().min(1),
  /** Largest deviation found, percent of the reference value (ISO 6789-1:2017, 5.1). */
  maximumDeviationPercent: z.number().min(0),
  /** Expanded relative uncertainty, k = 2 (ISO 6789-2:2017). */
  expandedUncertaintyPercent: z.number().min(0),
});
export type CalibrationSummary = z.infer<typeof calibrationSummarySchema>;

/** How pulls arrive from it. */
export const connectionSchema = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('typed') }),
  z.strictObject({ kind: z.literal('simulated'), seed: z.number().int() }),
  z.strictObject({ kind: z.literal('serial'), path: z.string().min(1) }),
]);

/** A torque (and angle) wrench. Type I indicates, type II is set (ISO 6789-1:2017, clause 4). */
export const wrenchSchema = z.strictObject({
  id: z.uuid(),
  name: z.string().trim().min(1).max(100),
  serial: z.string().trim().min(1).max(100),
  type: z.enum(['I', 'II']),
  class: z.string().trim().min(1).max(2),
  lowestNm: z.number().min(0),
  highestNm: z.number().positive(),
  resolutionNm: z.number().positive(),
  /** Absent: the wrench shows no angle. */
  angleResolutionDeg: z.number().positive().optional(),
  /** From the square drive to the marked point of the hand, mm. */
  leverMm: z.number().positive(),
  connection: connectionSchema,
  calibration: calibrationSummarySchema.optional(),
});
export type Wrench = z.infer<typeof wrenchSchema>;

/** Turns the fastener off the axis of the drive, in the plane of the wrench. */
export const adapterSchema = z.strictObject({
  id: z.uuid(),
  name: z.string().trim().min(1).max(100),
  /** From the square drive to the centre of the fastener, mm. */
  lengthMm: z.number().positive(),
  /** 0 straight out, 90 square to the handle, 180 folded back over it. */
  angleDeg: z.number().min(0).max(180),
});
export type Adapter = z.infer<typeof adapterSchema>;

/** A bar along the axis of the fastener: no change of torque, but it winds up. */
export const extensionSchema = z.strictObject({
  id: z.uuid(),
  name: z.string().trim().min(1).max(100),
  lengthMm: z.number().positive(),
  stiffnessNmPerDeg: z.number().positive().optional(),
});
export type Extension = z.infer<typeof extensionSchema>;

/** What is in the technician's hand: wrench with what is put on it. */
export const toolSchema = z.strictObject({
  wrench: wrenchSchema,
  adapter: adapterSchema.optional(),
  extension: extensionSchema.optional(),
});
export type Tool = z.infer<typeof toolSchema>;
