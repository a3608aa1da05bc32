import { z } from 'zod';
import { roleSchema } from '../failure/failure.ts';
import { jointRevisionSchema } from '../joint/joint.ts';
import { traceFiguresSchema } from '../trace/expectation.ts';
import { findingSchema } from '../trace/finding.ts';
import { reasonSchema, verdictSchema } from '../verdict/verdict.ts';
import { toolSchema } from '../wrench/wrench.ts';

export const instantSchema = z.iso.datetime({ precision: 3 });
const reasonText = z.string().trim().min(3).max(2000);
const sha256Schema = z.string().regex(/^[0-9a-f]{64}$/, 'SHA-256 in hexadecimal');

/** Who did it, as known when it was done. */
export const personRefSchema = z.strictObject({ id: z.uuid(), name: z.string().min(1), role: roleSchema });
export type PersonRef = z.infer<typeof personRefSchema>;

/** The thing worked on. */
export const assetSchema = z.strictObject({
  id: z.uuid(),
  name: z.string().trim().min(1).max(200),
  location: z.string().max(200),
});
export type Asset = z.infer<typeof assetSchema>;

/** A joint within a job: the released revision as it was when the job was made, under a short reference. */
export const jobJointSchema = z.strictObject({
  ref: z.string().regex(/^J[1-9][0-9]?$/),
  label: z.string().trim().min(1).max(200),
  joint: jointRevisionSchema,
});
export type JobJoint = z.infer<typeof jobJointSchema>;

/** What a job is about; fixed when it is opened. */
export const jobSheetSchema = z.strictObject({
  id: z.uuid(),
  title: z.string().trim().min(1).max(200),
  asset: assetSchema,
  joints: z.array(jobJointSchema).min(1).max(40),
  /** Belongs to the invented scenario. */
  demo: z.boolean(),
});
export type JobSheet = z.infer<typeof jobSheetSchema>;

/** One cell of the work: a position in a round of a stage of a joint. Stage and round count from 1. */
export const cellRefSchema = z.strictObject({
  jointRef: z.string(),
  stage: z.number().int().positive(),
  round: z.number().int().positive(),
  position: z.number().int().positive(),
});
export type CellRef = z.infer<typeof cellRefSchema>;

/** A figure as it was typed or shown, with its unit. */
export const shownSchema = z.strictObject({ text: z.string().min(1).max(40), unit: z.string().min(1) });

export const PULL_SOURCES = ['typed', 'simulated', 'serial', 'keyboard', 'opc-ua', 'http', 'file'] as const;

/** One continuous action of the wrench on one fastener. */
export const pullSchema = z.strictObject({
  cell: cellRefSchema,
  /** The wrench that did it: id of a wrench taken for this job. */
  wrenchId: z.uuid(),
  source: z.strictObject({ kind: z.enum(PULL_SOURCES), detail: z.string().max(300).optional() }),
  /** The device's own time; the time of arrival is the entry's. */
  takenAt: instantSchema,
  /** What the wrench showed, as it showed it. */
  shown: z.strictObject({ torque: shownSchema, angle: shownSchema.optional() }),
  /** What reached the fastener, adapter and wind-up taken into account. */
  reading: z.strictObject({
    torqueNm: z.number(),
    angleDeg: z.number().optional(),
    fastestDegPerS: z.number().min(0).optional(),
  }),
  /** Digest of the trace that is kept beside the pull. */
  trace: z
    .strictObject({
      samples: z.number().int().positive(),
      sha256: sha256Schema,
      /** What the curve said; absent in what was recorded before curves were read, and where it is no curve. */
      figures: traceFiguresSchema.optional(),
      findings: z.array(findingSchema).optional(),
    })
    .optional(),
});
export type Pull = z.infer<typeof pullSchema>;

/** The windows a pull was judged with, and what came of it. */
export const judgementSchema = z.strictObject({
  verdict: verdictSchema,
  reasons: z.array(reasonSchema),
  torque: z.strictObject({ lowerNm: z.number(), targetNm: z.number(), upperNm: z.number() }).optional(),
  angle: z.strictObject({ lowerDeg: z.number(), targetDeg: z.number(), upperDeg: z.number() }).optional(),
  speedLimitDegPerS: z.number().optional(),
  /** Turned in earlier attempts that stayed under and were carried on, degrees. */
  carriedDeg: z.number().optional(),
  /** Expanded uncertainty (k = 2) of the torque that was judged, N·m. */
  expandedUncertaintyNm: z.number().optional(),
});
export type Judgement = z.infer<typeof judgementSchema>;

export const exceptionSchema = z.strictObject({ by: personRefSchema, reason: reasonText });

/** Everything that can be said of a job. Each is appended, none is ever changed or removed. */
export const entryBodySchema = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('opened'), sheet: jobSheetSchema }),
  z.strictObject({
    kind: z.literal('tool-taken'),
    tool: toolSchema,
    jointRefs: z.array(z.string()).min(1),
    /** What speaks against it, as told when it was taken; needs the lead's exception. */
    objections: z.array(z.string()),
    exception: exceptionSchema.optional(),
  }),
  z.strictObject({ kind: z.literal('pull'), pull: pullSchema, judgement: judgementSchema }),
  z.strictObject({
    kind: z.literal('pull-moved'),
    pullId: z.uuid(),
    from: cellRefSchema,
    to: cellRefSchema,
    reason: reasonText,
    judgement: judgementSchema,
  }),
  z.strictObject({ kind: z.literal('pull-set-aside'), pullId: z.uuid(), cell: cellRefSchema, reason: reasonText }),
  z.strictObject({
    kind: z.literal('reworked'),
    jointRef: z.string(),
    position: z.number().int().positive(),
    how: z.enum(['loosened', 'fastener-replaced']),
    reason: reasonText,
    /** The lead who had it done, where it needed the lead. */
    orderedBy: personRefSchema.optional(),
  }),
  z.strictObject({ kind: z.literal('accepted'), cell: cellRefSchema, exception: exceptionSchema }),
  z.strictObject({ kind: z.literal('noted'), text: reasonText }),
  z.strictObject({ kind: z.literal('signed-off'), statement: reasonText }),
  z.strictObject({ kind: z.literal('closed') }),
]);
export type EntryBody = z.infer<typeof entryBodySchema>;

/** One link of a job's chain. `hash` is SHA-256 over the canonical form (RFC 8785) of all the rest. */
export const entrySchema = z.strictObject({
  jobId: z.uuid(),
  seq: z.number().int().positive(),
  id: z.uuid(),
  at: instantSchema,
  /** Set when the clock stood before the entry ahead of it: `at` was held, this is what the clock said. */
  clockSaid: instantSchema.optional(),
  by: personRefSchema,
  body: entryBodySchema,
  previousHash: sha256Schema,
  hash: sha256Schema,
});
export type Entry = z.infer<typeof entrySchema>;

/** An entry before the chain has taken it. For a pull, `id` is the pull's identity. */
export interface EntryDraft {
  readonly id: string;
  readonly at: string;
  readonly by: PersonRef;
  readonly body: EntryBody;
}
