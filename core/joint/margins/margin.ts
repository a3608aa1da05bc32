import { z } from 'zod';
import { type Remark, remarkSchema } from '../../language/mechanics/remark.ts';

export const CHECKS = [
  'yield-at-assembly',
  'proof-load',
  'yield-in-service',
  'alternating-load',
  'pressure-under-head',
  'pressure-under-nut',
  'nut-class',
  'thread-engagement',
  'stripping',
  'stays-closed',
  'clamp-force',
  'slip',
  'shear',
  'gasket-seating',
  'gasket-in-service',
  'gasket-crushing',
] as const;
export type CheckName = (typeof CHECKS)[number];

/** What is there beside what may be. */
export const marginSchema = z.strictObject({
  check: z.enum(CHECKS),
  actual: z.number().describe('what the joint is exposed to'),
  allowed: z.number().describe('what it bears'),
  unit: z.string(),
  ratio: z.number().describe('allowed over actual'),
  needed: z.number().describe('the ratio that is asked for'),
  holds: z.boolean(),
  clause: z.string().describe('where the check stands'),
  note: remarkSchema.describe('what the figures rest on'),
});
export type Margin = z.infer<typeof marginSchema>;

/** A check that could not be made, and the field that would let it. */
export const notCheckedSchema = remarkSchema.extend({
  check: z.enum(CHECKS),
  field: z.string().describe('what is missing'),
});
export type NotChecked = z.infer<typeof notCheckedSchema>;

export type Checked = { readonly margin: Margin } | { readonly missing: NotChecked };

type Given = Omit<Margin, 'ratio' | 'holds' | 'needed'> & { readonly needed?: number };

/** The ratio of a margin nothing speaks against; a number, so that it can be compared and written as JSON. */
const ENDLESS = 1e9;

/** Allowed over actual, and whether that is enough; binary fractions do not decide. */
export function margin({ check, needed = 1, ...given }: Given): Checked {
  const ratio = given.actual <= 0 ? ENDLESS : Math.min(given.allowed / given.actual, ENDLESS);
  return { margin: { check, holds: ratio >= needed * (1 - 1e-12), ratio, needed, ...given } };
}

export const notChecked = (check: CheckName, field: string, why: Remark): Checked => ({
  missing: { check, field, ...why },
});
