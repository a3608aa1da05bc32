import { z } from 'zod';

/** Which way the square turns; a wrench is calibrated in each direction in which it is used. */
export const DIRECTIONS = ['clockwise', 'anticlockwise'] as const;
export const directionSchema = z.enum(DIRECTIONS);
export type Direction = z.infer<typeof directionSchema>;

/** What a calibration found at one torque. */
export const calibratedPointSchema = z.strictObject({
  torqueNm: z.number().positive(),
  /** Absent: the same in every direction in use. */
  direction: directionSchema.optional(),
  /** Mean relative deviation: shown less reference over reference, percent (ISO 6789-1:2017). */
  deviationPercent: z.number(),
  /** Expanded relative uncertainty, k = 2 (ISO 6789-2:2017). */
  expandedUncertaintyPercent: z.number().min(0),
});
export type CalibratedPoint = z.infer<typeof calibratedPointSchema>;

/** What the last calibration of a wrench says; the whole certificate is kept elsewhere. */
export const calibrationSummarySchema = z.strictObject({
  calibratedOn: z.iso.date(),
  dueOn: z.iso.date(),
  /** Pulls after which it is due though the day has not come; absent: as usual. */
  dueAfterPulls: z.number().int().positive().optional(),
  certificate: z.string().min(1),
  by: z.string().min(1),
  /** Largest deviation found, percent of the reference value (ISO 6789-1:2017, 5.1). */
  maximumDeviationPercent: z.number().min(0),
  /** Expanded relative uncertainty, k = 2 (ISO 6789-2:2017). */
  expandedUncertaintyPercent: z.number().min(0),
  /** Absent in summaries that were typed from a paper: then the two figures above hold over the whole range. */
  points: z.array(calibratedPointSchema).min(1).max(60).optional(),
  /** False: it was found and left off, and must not be used. */
  conforms: z.literal(false).optional(),
  /** The whole calibration, where it is kept here. */
  calibrationId: z.uuid().optional(),
});
export type CalibrationSummary = z.infer<typeof calibrationSummarySchema>;

/** How pulls arrive from it. */
export const connectionSchema = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('typed') }),
  z.strictObject({ kind: z.literal('simulated'), seed: z.number().int() }),
  z.strictObject({ kind: z.literal('serial'), path: z.string().min(1) }),
]);

/** Driving squares by their nominal size, mm (ISO 1174-1). */
export const DRIVES_MM = [6.3, 10, 12.5, 20, 25] as const;
export const driveSchema = z.literal(DRIVES_MM);

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
  /** Driving square, mm; absent where it is none of the standard ones, such as a plug-in shank. */
  driveMm: driveSchema.optional(),
  /** Directions in which it is used; absent: clockwise. */
  directions: z.array(directionSchema).min(1).max(2).optional(),
  /** Day from which it exists; no calibration can lie before it. */
  madeOn: z.iso.date().optional(),
  /** Where it is kept. */
  place: z.string().trim().min(1).max(200).optional(),
  /** Who has it in hand now. */
  heldBy: z.string().trim().min(1).max(100).optional(),
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
  /** Standard uncertainty of the measured length, mm; absent: that of a length read from a rule. */
  lengthStandardUncertaintyMm: z.number().min(0).optional(),
});
export type Adapter = z.infer<typeof adapterSchema>;

/** A bar along the axis of the fastener: no change of torque, but it winds up. */
export const extensionSchema = z.strictObject({
  id: z.uuid(),
  name: z.string().trim().min(1).max(100),
  lengthMm: z.number().positive(),
  stiffnessNmPerDeg: z.number().positive().optional(),
  /** Standard uncertainty of the stiffness, percent of it. */
  stiffnessStandardUncertaintyPercent: z.number().min(0).max(100).optional(),
  /** Standard uncertainty that bending and play of the bar bring into the torque, percent; absent: none is known. */
  torqueStandardUncertaintyPercent: z.number().min(0).max(100).optional(),
});
export type Extension = z.infer<typeof extensionSchema>;

/** What is in the technician's hand: wrench with what is put on it. */
export const toolSchema = z.strictObject({
  wrench: wrenchSchema,
  adapter: adapterSchema.optional(),
  extension: extensionSchema.optional(),
});
export type Tool = z.infer<typeof toolSchema>;
