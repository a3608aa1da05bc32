import { deviceCountsSchema, deviceSchema } from '@clampwright/core/device';
import { roleSchema } from '@clampwright/core/failure';
import { jointContentSchema, jointRevisionSchema } from '@clampwright/core/joint';
import {
  assetSchema,
  commandSchema,
  entrySchema,
  instantSchema,
  jobSheetSchema,
  traceSchema,
} from '@clampwright/core/record';
import { expectationSchema } from '@clampwright/core/trace';
import {
  adapterSchema,
  assumptionSchema,
  beforeUseCheckSchema,
  calibrationSchema,
  calibrationSummarySchema,
  extensionSchema,
  foundSchema,
  pullInDoubtSchema,
  recallSchema,
  recheckSchema,
  referenceStandardSchema,
  wrenchSchema,
} from '@clampwright/core/wrench';
import { FAULTS } from '@clampwright/intake/simulated';
import { z } from 'zod';

/* What goes over the wire. The client imports the types of this file and nothing else of the server. */

export const personSchema = z.strictObject({
  id: z.uuid(),
  name: z.string().trim().min(1).max(100),
  role: roleSchema,
  hasPin: z.boolean(),
  demo: z.boolean(),
});
export type Person = z.infer<typeof personSchema>;

export const newPersonSchema = z.strictObject({
  name: z.string().trim().min(1).max(100),
  role: roleSchema,
  pin: z.string().regex(/^\d{4,12}$/, '4 to 12 digits'),
});
export type NewPerson = z.infer<typeof newPersonSchema>;

/** Who is at this screen; `person` is null for somebody who only looks. `firstStart`: there are no people yet. */
export const sessionSchema = z.strictObject({
  person: personSchema.nullable(),
  firstStart: z.boolean(),
  demoLoaded: z.boolean(),
});
export type Session = z.infer<typeof sessionSchema>;
export const signInSchema = z.strictObject({ personId: z.uuid(), pin: z.string().min(1).max(12) });

/** What a pull is drawn over; each curve thinned to its lowest and highest torques, at most 120 points. */
export const earlierTracesSchema = z.strictObject({
  expected: expectationSchema.optional().describe('what a sound pull of this joint looks like'),
  curves: z
    .array(
      z.strictObject({
        fromSnugDeg: z.array(z.number()).readonly().describe('turning of the fastener from its own snug, degrees'),
        torqueNm: z.array(z.number()).readonly().describe('torque at the fastener, N·m'),
      }),
    )
    .readonly()
    .describe('accepted pulls on the same step of the same joint revision, the latest first, at most 200'),
});
export type EarlierTraces = z.infer<typeof earlierTracesSchema>;

/** A job in a list. */
export const jobListItemSchema = z.strictObject({
  id: z.uuid(),
  title: z.string(),
  assetName: z.string(),
  assetLocation: z.string(),
  status: z.enum(['open', 'signed-off', 'closed']),
  openedAt: instantSchema,
  lastAt: instantSchema,
  /** Cells done and cells in all. */
  done: z.number().int(),
  total: z.number().int(),
  demo: z.boolean(),
});
export type JobListItem = z.infer<typeof jobListItemSchema>;

/** A job whole; the client folds the entries with `core/record`, as the server does. */
export const jobSchema = z.strictObject({ sheet: jobSheetSchema, entries: z.array(entrySchema) });
export type Job = z.infer<typeof jobSchema>;

export const newJobSchema = z.strictObject({
  id: z.uuid(),
  title: z.string().trim().min(1).max(200),
  asset: assetSchema,
  joints: z
    .array(
      z.strictObject({
        jointId: z.uuid(),
        revision: z.number().int().positive(),
        label: z.string().trim().min(1).max(200),
      }),
    )
    .min(1)
    .max(40),
});
export type NewJob = z.infer<typeof newJobSchema>;

/** A lead's word given at somebody else's screen. */
export const leadWordSchema = z.strictObject({ personId: z.uuid(), pin: z.string().min(1).max(12) });
/** `id` makes a repeated command the same command; a pull brings its own. */
export const postCommandSchema = z.strictObject({
  id: z.uuid().optional(),
  command: commandSchema,
  lead: leadWordSchema.optional(),
});
/** `already`: the same thing had been stored before; nothing was added. */
export const commandResultSchema = z.strictObject({ entries: z.array(entrySchema), already: z.boolean() });
export type CommandResult = z.infer<typeof commandResultSchema>;

/** A pull of the simulated wrench on the next cell, or on the one named. */
export const simulateSchema = z.strictObject({
  jointRef: z.string(),
  position: z.number().int().positive().optional(),
  fault: z.enum(FAULTS).default('none'),
});
export type Simulate = z.infer<typeof simulateSchema>;

export const jointListItemSchema = z.strictObject({
  id: z.uuid(),
  name: z.string(),
  thread: z.string(),
  positions: z.number().int(),
  latestRevision: z.number().int(),
  latestStatus: z.enum(['draft', 'released']),
  releasedRevision: z.number().int().nullable(),
  demo: z.boolean(),
});
export type JointListItem = z.infer<typeof jointListItemSchema>;
export const jointHistorySchema = z.strictObject({ revisions: z.array(jointRevisionSchema), demo: z.boolean() });
export type JointHistory = z.infer<typeof jointHistorySchema>;
/** Keeps a draft: makes the joint, changes its draft, or begins a new revision after a released one. */
export const saveJointSchema = z.strictObject({ id: z.uuid(), content: jointContentSchema });

/** Pulls that stand on one step of a joint revision, in the order of the jobs and in each as they came. */
export const jointPullsSchema = z.strictObject({
  steps: z.array(
    z.strictObject({
      stage: z.number().int(),
      round: z.number().int(),
      /** What is judged: torque in N·m, or angle in degrees. */
      quantity: z.enum(['torque', 'angle']),
      /** Absent where each position has a window of its own. */
      lower: z.number().optional(),
      upper: z.number().optional(),
      values: z.array(z.number()).readonly(),
    }),
  ),
  jobs: z.number().int(),
});
export type JointPulls = z.infer<typeof jointPullsSchema>;

export const toolboxSchema = z.strictObject({
  wrenches: z.array(wrenchSchema),
  adapters: z.array(adapterSchema),
  extensions: z.array(extensionSchema),
});
export type Toolbox = z.infer<typeof toolboxSchema>;
export const newCalibrationSchema = calibrationSummarySchema;

/** All that is known of the care of one wrench. */
export const wrenchCareSchema = z.strictObject({
  wrench: wrenchSchema,
  /** Every calibration in the order in which it was added, also those typed from paper. */
  summaries: z.array(calibrationSummarySchema),
  /** Those with their readings, in the order of time. */
  calibrations: z.array(calibrationSchema),
  checks: z.array(beforeUseCheckSchema),
  recalls: z.array(recallSchema),
  /** Pulls since the last calibration. */
  pullsSince: z.number().int(),
  /** How it was found, calibration by calibration, and the same of every wrench of its type and class. */
  history: z.array(foundSchema).readonly(),
  historyAlike: z.array(foundSchema).readonly(),
});
export type WrenchCare = z.infer<typeof wrenchCareSchema>;

/** Where a wrench is kept and who has it; left out: nobody knows. */
export const whereaboutsSchema = z.strictObject({
  place: z.string().trim().min(1).max(200).optional(),
  heldBy: z.string().trim().min(1).max(100).optional(),
});
export type Whereabouts = z.infer<typeof whereaboutsSchema>;

export const keptCalibrationSchema = z.strictObject({ calibration: calibrationSchema, wrench: wrenchSchema });

/** A comparison that the simulated wrench makes with a simulated reference. */
export const simulatedComparisonSchema = z.strictObject({ indicatedNm: z.number(), referenceNm: z.number() });

/** What a wrench or a device told while somebody listens to it for a calibration. */
export const liveReadingSchema = z.strictObject({
  kind: z.literal('reading'),
  torqueNm: z.number(),
  /** As it was told. */
  text: z.string(),
  unit: z.string(),
  /** Serial numbers and other names that it gave itself. */
  from: z.array(z.string()).readonly(),
});
export type LiveReading = z.infer<typeof liveReadingSchema>;

/** What wants to be calibrated, by day or by pulls, the most urgent first. */
export const dueItemSchema = z.strictObject({
  kind: z.enum(['wrench', 'reference']),
  id: z.uuid(),
  name: z.string(),
  serial: z.string(),
  place: z.string().optional(),
  certificate: z.string().optional(),
  calibratedOn: z.iso.date().optional(),
  /** Absent: never calibrated. */
  dueOn: z.iso.date().optional(),
  state: z.enum(['never', 'off', 'overdue', 'soon', 'valid']),
  pullsSince: z.number().int().optional(),
  /** Pulls after which it is due though the day has not come. */
  dueAfterPulls: z.number().int().optional(),
});
export type DueItem = z.infer<typeof dueItemSchema>;

/** Opens a recall: the server finds the last good calibration and the errors that were found. */
export const newRecallSchema = z.strictObject({
  id: z.uuid(),
  /** The calibration that found the wrench off. */
  calibrationId: z.uuid(),
  /** What happened to it; left out: nothing is known, it was found off. */
  dropped: z.strictObject({ at: instantSchema, what: z.string().trim().min(3).max(2000) }).optional(),
});
export type NewRecall = z.infer<typeof newRecallSchema>;

/** A recall in a list. */
export const recallListItemSchema = z.strictObject({
  recall: recallSchema,
  wrench: wrenchSchema,
  pulls: z.number().int(),
  /** Pulls about which something was done. */
  rechecked: z.number().int(),
});
export type RecallListItem = z.infer<typeof recallListItemSchema>;

/** What a pull was worth under one assumption. */
const rejudgedSchema = z.strictObject({
  /** At the fastener, the error taken off. */
  torqueNm: z.number(),
  standardUncertaintyNm: z.number(),
  verdict: z.enum(['within', 'under', 'over']),
  below: z.number(),
  above: z.number(),
  outside: z.number(),
});
export const recallQuerySchema = z.strictObject({
  assumption: assumptionSchema
    .optional()
    .describe('sorts by the chance under this one; left out: by the greatest of the three'),
  offset: z.coerce.number().int().min(0).default(0),
  limit: z.coerce.number().int().min(1).max(1000).default(200),
});
/** A page of the list to go out with, the gravest first. */
export const recallPageSchema = z.strictObject({
  recall: recallSchema,
  wrench: wrenchSchema,
  lines: z.array(
    z.strictObject({
      pull: pullInDoubtSchema,
      under: z.record(assumptionSchema, rejudgedSchema),
      /** The greatest chance of lying outside, over the assumptions. */
      outside: z.number(),
      /** What was done about it last. */
      recheck: recheckSchema.optional(),
    }),
  ),
  total: z.number().int(),
  rechecked: z.number().int(),
  /** Expected number of pulls outside their limits, under each assumption. */
  expectedOutside: z.record(assumptionSchema, z.number()),
});
export type RecallPage = z.infer<typeof recallPageSchema>;

export const newRecheckSchema = recheckSchema.pick({ id: true, pullId: true, outcome: true, note: true });
export type NewRecheck = z.infer<typeof newRecheckSchema>;

export const todaySchema = z.strictObject({
  jobs: z.array(jobListItemSchema),
  /** Calibration overdue or due within 30 days. */
  wrenches: z.array(z.strictObject({ wrench: wrenchSchema, state: z.enum(['never', 'off', 'overdue', 'soon']) })),
  /** Reference standards likewise. */
  references: z.array(z.strictObject({ reference: referenceStandardSchema, state: z.enum(['overdue', 'soon']) })),
  /** Recalls with pulls about which nothing was done yet. */
  recalls: z.array(recallListItemSchema),
  /** Joints of closed jobs that want to be tightened again. */
  retorques: z.array(
    z.strictObject({
      jobId: z.uuid(),
      jobTitle: z.string(),
      assetName: z.string(),
      closedAt: instantSchema,
      after: z.number(),
      unit: z.enum(['km', 'h', 'd']),
      note: z.string(),
    }),
  ),
});
export type Today = z.infer<typeof todaySchema>;

/** Query of `POST /mappings/guess`. The body is the beginning of the file, some kilobytes of it. */
export const guessQuerySchema = z.strictObject({
  zone: z.string().default('UTC').describe('IANA time zone for times that name none: that of whoever looks'),
});
/** A proposal how a file is to be read; to be looked at, never used as it is. */
export const guessSchema = z.strictObject({
  mapping: z.record(z.string(), z.unknown()).describe('a mapping without its name, as far as it was found'),
  sure: z.boolean(),
  doubts: z.array(z.strictObject({ field: z.string(), message: z.string() })),
  header: z.array(z.string()).optional().describe('names of the columns; missing: there is no header row'),
  rows: z.array(z.array(z.string())).describe('the first rows'),
});

export const IMPORT_MODES = ['preview', 'all-or-nothing', 'good-lines'] as const;
/** Query of `POST /jobs/{id}/imports`. The body is the file itself, byte for byte, whatever its type. */
export const importQuerySchema = z.strictObject({
  mode: z.enum(IMPORT_MODES),
  mapping: z.string().min(1).describe('name of a saved mapping, or a mapping itself as JSON'),
  joint: z.string().optional().describe('joint of the job, such as J1, for lines that name none'),
  fileName: z.string().max(250).optional(),
});
export type ImportQuery = z.infer<typeof importQuerySchema>;

/** How a device stands, and what it has told so far. */
export const deviceStandingSchema = deviceCountsSchema.extend({
  /** `waiting`: not asked yet, or (HTTP, folder) nothing has come yet. */
  state: z.enum(['waiting', 'connected', 'lost', 'set-up-wrong']),
  detail: z.string(),
  /** The server shows a certificate that nobody has trusted yet: its SHA-256. */
  certificate: z.string().optional(),
});
export type DeviceStanding = Readonly<z.infer<typeof deviceStandingSchema>>;

/** A device as the screen shows it; its password never leaves the server. */
export const shownDeviceSchema = z.strictObject({
  device: deviceSchema,
  hasPassword: z.boolean(),
  hasKey: z.boolean(),
  standing: deviceStandingSchema,
});
export type ShownDevice = z.infer<typeof shownDeviceSchema>;
/** `keepPassword`: the one that is kept stays, as the screen never got to know it. */
export const saveDeviceSchema = z.strictObject({ device: deviceSchema, keepPassword: z.boolean().default(false) });
/** Shown once; only its hash is kept. */
export const deviceKeySchema = z.strictObject({ key: z.string() });
export const deviceTestSchema = z.strictObject({
  works: z.boolean(),
  detail: z.string(),
  certificate: z.string().optional(),
});
export type DeviceTest = z.infer<typeof deviceTestSchema>;

/** A pull as a device sends it over HTTP. */
export const sentPullSchema = z.strictObject({
  id: z.uuid().describe('given where the pull was made: sent again, it is stored once'),
  wrench: z.string().max(100).optional().describe('serial number; left out: the wrench of the device'),
  takenAt: z.iso.datetime({ offset: true }).optional().describe('left out: when it arrives'),
  torque: z.number(),
  torqueUnit: z.enum(['N·m', 'cN·m', 'dN·m', 'kN·m', 'lbf·ft', 'lbf·in', 'ozf·in', 'kgf·m', 'kgf·cm']).default('N·m'),
  angle: z.number().optional(),
  angleUnit: z.enum(['deg', 'rad', 'turn']).default('deg'),
  fastestDegPerS: z.number().min(0).optional(),
  position: z.number().int().positive().optional().describe('left out: the next one of the joint'),
  trace: traceSchema.optional(),
});
export type SentPull = z.infer<typeof sentPullSchema>;
/** What became of a sent pull; `added` and `already` are stored durably. */
export const takenPullSchema = z.strictObject({
  id: z.uuid().nullable(),
  /** `compared`: a calibration listens to it; nothing is stored. */
  state: z.enum(['added', 'already', 'refused', 'compared']),
  verdict: z.enum(['within', 'under', 'over', 'doubtful']).optional(),
  problem: z.lazy(() => problemSchema).optional(),
});
export type TakenPull = z.infer<typeof takenPullSchema>;

/** What an import of a file did, or in a preview would do. */
export const importResultSchema = z.strictObject({
  lines: z.number().int(),
  pulls: z.number().int(),
  added: z.number().int(),
  already: z.number().int(),
  refusedCount: z.number().int(),
  /** False for a preview, and where one refused line kept all of an all-or-nothing out. */
  kept: z.boolean(),
  /** The first hundred. */
  refused: z.array(z.strictObject({ line: z.number().int(), field: z.string(), message: z.string() })),
  verdicts: z.record(z.string(), z.number().int()),
  /** The first fifty pulls as they are understood and judged. */
  preview: z.array(
    z.strictObject({
      line: z.number().int(),
      jointRef: z.string(),
      position: z.number().int(),
      stage: z.number().int(),
      round: z.number().int(),
      torqueNm: z.number(),
      angleDeg: z.number().nullable(),
      takenAt: z.string(),
      verdict: z.string(),
    }),
  ),
});
export type ImportResult = z.infer<typeof importResultSchema>;

/**
 * RFC 9457. The end of `type` is the kind of the failure; the fields of that failure stand beside it, so that
 * a client can say it in its own language: `field` and `expected` with invalid input, `what` and `id` of what is
 * not there, `current` with a conflict, `action` and `needs` where a role is wanting, `remedy` of what does not
 * answer, `retryAfterS` after too many attempts.
 */
export const problemSchema = z.object({
  type: z.string(),
  title: z.string(),
  status: z.number().int(),
  detail: z.string(),
  field: z.string().optional(),
  expected: z.string().optional(),
  what: z.string().optional(),
  id: z.string().optional(),
  current: z.unknown().optional(),
  action: z.string().optional(),
  needs: roleSchema.optional(),
  remedy: z.string().optional(),
  retryAfterS: z.number().int().optional(),
});
export type Problem = z.infer<typeof problemSchema>;

/**
 * What the live stream of a job tells (server-sent events, one JSON object each in `data`).
 * `entries`: there is more after `afterSeq`; fetch it from `/jobs/{id}/entries?after=`.
 * `/jobs/{id}/live?joint=J2` says too that J2 is worked on at this screen: pulls of a wrench on a serial port that was
 * taken for several joints belong to the one whose screen was opened last.
 */
export const liveEventSchema = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('entries'), afterSeq: z.number().int() }),
  z.strictObject({ kind: z.literal('torque'), jointRef: z.string(), torqueNm: z.number(), angleDeg: z.number() }),
  z.strictObject({
    kind: z.literal('wrench'),
    wrenchId: z.uuid(),
    /** `pull-refused`: a pull came that could not be recorded; `detail` says why and what to do. */
    state: z.enum(['connected', 'lost', 'unreadable-line', 'pull-refused', 'at-calibration']),
    detail: z.string(),
  }),
]);
export type LiveEvent = Readonly<z.infer<typeof liveEventSchema>>;
