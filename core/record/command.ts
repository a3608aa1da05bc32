import { z } from 'zod';
import { cellRefSchema, instantSchema, PULL_SOURCES, shownSchema } from './entry.ts';

const reason = z.string().trim().min(3).max(2000);

/** Samples of one pull, equally long arrays; torque as the wrench showed it, N·m. */
export const traceSchema = z
  .strictObject({
    timeS: z.array(z.number()).min(2).max(200_000),
    angleDeg: z.array(z.number()).min(2).max(200_000),
    torqueNm: z.array(z.number()).min(2).max(200_000),
  })
  .refine(({ timeS, angleDeg, torqueNm }) => timeS.length === angleDeg.length && timeS.length === torqueNm.length, {
    error: 'time, angle and torque have not the same number of samples',
  });
export type Trace = z.infer<typeof traceSchema>;

/** A pull as it comes in: what the wrench showed and where it belongs, not yet judged. */
export const incomingPullSchema = z.strictObject({
  kind: z.literal('record-pull'),
  /** Identity given where the pull was made; the same id twice is stored once. */
  id: z.uuid(),
  jointRef: z.string().min(1),
  position: z.number().int().positive().optional().describe('a position of the joint; left out: the next one'),
  stage: z.number().int().positive().optional(),
  round: z.number().int().positive().optional(),
  /** The attempt this is meant to be; another one on the same cell meanwhile is a conflict. */
  attempt: z.number().int().positive().optional(),
  /** Which tool taken for this job; left out: the one last taken for the joint. */
  wrenchId: z.uuid().optional(),
  source: z.strictObject({ kind: z.enum(PULL_SOURCES), detail: z.string().max(300).optional() }),
  takenAt: instantSchema,
  shown: z.strictObject({ torque: shownSchema, angle: shownSchema.optional() }),
  /** What was shown, converted: as the wrench showed it, adapter and wind-up not yet taken into account. */
  shownTorqueNm: z.number(),
  shownAngleDeg: z.number().optional(),
  fastestDegPerS: z.number().min(0).optional(),
  trace: traceSchema.optional(),
});
export type IncomingPull = z.infer<typeof incomingPullSchema>;

/** What can be asked of a job. The server puts in who asks and when; `exception.by` is a lead it has checked. */
export const commandSchema = z.discriminatedUnion('kind', [
  incomingPullSchema,
  z.strictObject({
    kind: z.literal('take-tool'),
    wrenchId: z.uuid(),
    adapterId: z.uuid().optional(),
    extensionId: z.uuid().optional(),
    jointRefs: z.array(z.string()).min(1),
    exceptionReason: reason.optional(),
  }),
  z.strictObject({ kind: z.literal('move-pull'), pullId: z.uuid(), to: cellRefSchema, reason }),
  z.strictObject({ kind: z.literal('set-pull-aside'), pullId: z.uuid(), reason }),
  z.strictObject({
    kind: z.literal('rework'),
    jointRef: z.string(),
    position: z.number().int().positive(),
    how: z.enum(['loosened', 'fastener-replaced']),
    reason,
  }),
  z.strictObject({ kind: z.literal('accept'), cell: cellRefSchema, reason }),
  z.strictObject({ kind: z.literal('note'), text: reason }),
  z.strictObject({ kind: z.literal('sign-off'), statement: reason }),
  z.strictObject({ kind: z.literal('close') }),
]);
export type Command = z.infer<typeof commandSchema>;
