import { z } from 'zod';

/** What a curve can say against a pull. */
export const FINDING_KINDS = [
  'crossed-thread',
  'stripping',
  'already-tight',
  'bottomed',
  'too-soft',
  'yielded',
  'over-run',
  'pulled-too-fast',
  'jerked',
  'slipped-socket',
  'two-pulls',
  'stick-slip',
  'loosening',
] as const;
export type FindingKind = (typeof FINDING_KINDS)[number];

/** Unit of the figures of a finding. */
export const FINDING_QUANTITIES = ['torque', 'angle', 'speed', 'slope'] as const;

/** What was found, as data; `core/language` says it in words. */
export const findingSchema = z.strictObject({
  kind: z.enum(FINDING_KINDS),
  /** From 0 to 1: a half where it only just shows. */
  confidence: z.number().min(0).max(1),
  /** Where on the curve it shows, degrees. */
  atDeg: z.number(),
  /** What was seen, and the bound that it passed; N·m, degrees, degrees a second, N·m a degree. */
  quantity: z.enum(FINDING_QUANTITIES),
  value: z.number(),
  limit: z.number(),
});
export type Finding = z.infer<typeof findingSchema>;

/** Half where a figure stands on its bound, 0.99 where it lies the bound's half beyond it. */
export function confidenceOf(value: number, limit: number): number {
  const beyond = Math.abs(value - limit) / Math.max(Math.abs(limit), 1e-9);
  return Math.round(1000 * (1 - 0.5 * Math.exp(-8 * beyond))) / 1000;
}
