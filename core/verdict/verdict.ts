import { z } from 'zod';

/** What a pull means against its windows. */
export const VERDICTS = ['within', 'under', 'over', 'doubtful'] as const;
export const verdictSchema = z.enum(VERDICTS);
export type Verdict = z.infer<typeof verdictSchema>;

/**
 * Why a verdict is what it is, as data; `core/language` says it in words.
 * `notice` codes stand beside a verdict without changing it.
 */
export const REASON_CODES = [
  'inside',
  'below-lower',
  'above-upper',
  'inside-guard-band',
  'not-measured',
  'too-fast',
  'not-reworked',
  'loosening',
  'notice-out-of-order',
  'notice-device-clock',
  'notice-beyond-attempts',
] as const;
export const reasonSchema = z.strictObject({
  code: z.enum(REASON_CODES),
  quantity: z.enum(['torque', 'angle', 'speed']).optional(),
  /** Figures in the quantity's own unit: N·m, degrees, degrees a second. */
  value: z.number().optional(),
  limit: z.number().optional(),
  /** With `inside-guard-band`: chance that the true value lies beyond the limit, to three digits. */
  probability: z.number().min(0).max(1).optional(),
});
export type Reason = z.infer<typeof reasonSchema>;
