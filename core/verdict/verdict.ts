import { z } from 'zod';
import { FINDING_KINDS, FINDING_QUANTITIES, type FindingKind } from '../trace/finding.ts';

/** What a pull means against its windows. */
export const VERDICTS = ['within', 'under', 'over', 'doubtful'] as const;
export const verdictSchema = z.enum(VERDICTS);
export type Verdict = z.infer<typeof verdictSchema>;

/**
 * Why a verdict is what it is, as data; `core/language` says it in words.
 * `notice` codes stand beside a verdict without changing it.
 */
const PLAIN_CODES = [
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
/** The reason that a finding on the trace is. */
export type TraceReasonCode = `trace-${FindingKind}`;
export const traceReason = (kind: FindingKind): TraceReasonCode => `trace-${kind}`;
export const REASON_CODES = [...PLAIN_CODES, ...FINDING_KINDS.map((kind) => traceReason(kind))] as const;
export const reasonSchema = z.strictObject({
  code: z.enum(REASON_CODES),
  quantity: z.enum(FINDING_QUANTITIES).optional(),
  /** Figures in the quantity's own unit: N·m, degrees, degrees a second, N·m a degree. */
  value: z.number().optional(),
  limit: z.number().optional(),
  /** With `inside-guard-band`: chance that the true value lies beyond the limit, to three digits. */
  probability: z.number().min(0).max(1).optional(),
});
export type Reason = z.infer<typeof reasonSchema>;
