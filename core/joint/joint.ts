import { z } from 'zod';
import { ownBoltSchema, ownMaterialSchema, threadOfBolt } from '../fastener/own-row.ts';
import type { ThreadTold } from '../fastener/own-thread.ts';
import { layoutSchema } from '../layout/layout.ts';
import { stageSchema } from '../procedure/procedure.ts';
import { consequenceClassSchema } from './consequence.ts';
import { derivationSchema } from './derivation.ts';
import { neighboursSchema } from './neighbours.ts';

/** What takes torque before anything is clamped. */
export const PREVAILING_CAUSES = ['thread-forming', 'locking'] as const;

/**
 * Torque that a sound fastener takes before it clamps: a screw that forms its own thread, or a nut or thread that locks.
 *
 * @source prevailing torque: ISO 2320
 */
export const prevailingSchema = z.strictObject({
  by: z.enum(PREVAILING_CAUSES),
  /** Highest that its maker, its standard or a trial tells, N·m. */
  highestNm: z.number().positive(),
});

export const fastenerSpecSchema = z.strictObject({
  /** Designation such as `M24`, `M10x1.25`, `3/8-16 UNC`. */
  thread: z.string().min(1),
  propertyClass: z.string().min(1).optional(),
  /** Where the thread is a bolt of the workshop's own, its row as it stood; `thread` is its designation. */
  ownBolt: ownBoltSchema.optional(),
  /** The same of a material that stands in place of a class. */
  ownMaterial: ownMaterialSchema.optional(),
  description: z.string(),
  lubricant: z.string(),
  /** What the maker asks about using a fastener again. */
  reuse: z.enum(['reusable', 'new-each-time']),
  /** Absent: it runs free until the parts meet. */
  prevailing: prevailingSchema.optional(),
  /** Of the fastener and what it clamps in a row, N/mm, as `compliance` gives it; absent: not known. */
  stiffnessNPerMm: z.number().positive().max(1e8).optional(),
});
export type FastenerSpec = z.infer<typeof fastenerSpecSchema>;

/** The thread of a joint as calculations take it. */
export const threadTold = ({ thread, ownBolt }: Pick<FastenerSpec, 'thread' | 'ownBolt'>): ThreadTold =>
  ownBolt ? threadOfBolt(ownBolt) : thread;

/** Where the numbers come from; the maker's figure comes before anything derived. */
export const numbersSourceSchema = z.strictObject({
  kind: z.enum(['maker', 'standard', 'trial', 'derived']),
  text: z.string().min(1),
  /** With `derived`, where it was worked out here. */
  derivation: derivationSchema.optional(),
});

/** What is done with a pull that is not `within`. */
export const reworkSchema = z.strictObject({
  rule: z.enum(['loosen-and-repeat', 'replace-fastener', 'ask-lead']),
  /** A pull that stayed under may be carried on without loosening. */
  underContinues: z.boolean(),
  /** After so many attempts on one position and stage the lead is asked. */
  maximumAttempts: z.number().int().min(1).max(20),
});
export type Rework = z.infer<typeof reworkSchema>;

/**
 * `simple`: inside is `within`. `guarded`: closer to a limit than factor times U is `doubtful`. `risk`: `doubtful` where
 * the chance of lying outside is greater than the maximum.
 *
 * @source JCGM 106:2012, 8.2 (simple acceptance), 8.3 (guard bands)
 */
export const decisionRuleSchema = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('simple') }),
  z.strictObject({ kind: z.literal('guarded'), factor: z.number().gt(0).max(2) }),
  z.strictObject({ kind: z.literal('risk'), maximum: z.number().gt(0).max(0.5) }),
]);
export type DecisionRule = z.infer<typeof decisionRuleSchema>;

/** When a joint wants to be tightened again after it was closed. */
export const retorqueSchema = z.strictObject({
  after: z.number().positive(),
  unit: z.enum(['km', 'h', 'd']),
  note: z.string(),
});

/** What a lead writes of a joint; identity and revision are put on when it is kept. */
export const jointContentSchema = z.strictObject({
  name: z.string().trim().min(1).max(200),
  fastener: fastenerSpecSchema,
  layout: layoutSchema,
  stages: z.array(stageSchema).min(1).max(12),
  numbersSource: numbersSourceSchema,
  cautions: z.array(z.string().min(1)).max(20),
  rework: reworkSchema,
  decisionRule: decisionRuleSchema,
  /** Unit in which the work is done and shown. */
  torqueUnit: z.enum(['N·m', 'cN·m', 'dN·m', 'kN·m', 'lbf·ft', 'lbf·in', 'ozf·in', 'kgf·m', 'kgf·cm']),
  retorque: retorqueSchema.optional(),
  /** Absent: not classified. */
  consequenceClass: consequenceClassSchema.optional(),
  /** What one bolt does to the next, where it is known, and the rounds planned with it. */
  neighbours: neighboursSchema.optional(),
});
export type JointContent = z.infer<typeof jointContentSchema>;

/** One revision of a joint. A released one is never edited: it gets a new revision. */
export const jointRevisionSchema = z.strictObject({
  id: z.uuid(),
  revision: z.number().int().positive(),
  status: z.enum(['draft', 'released']),
  content: jointContentSchema,
});
export type JointRevision = z.infer<typeof jointRevisionSchema>;
