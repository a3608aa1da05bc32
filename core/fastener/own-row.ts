import { z } from 'zod';

const strengthMPa = z.number().gt(0).max(3000);
const coefficient = z.number().gt(0).max(1);

/** Least and greatest coefficient found; 0 and above 1 are slips. */
export const frictionRangeSchema = z
  .strictObject({ lower: coefficient, upper: coefficient })
  .refine(({ lower, upper }) => lower <= upper, { path: ['upper'], error: 'lies below the lower figure' });
export type FrictionRange = z.infer<typeof frictionRangeSchema>;

const written = {
  id: z.uuid(),
  /** As it is chosen from a list: what it is, and of which batch. */
  name: z.string().trim().min(1).max(200),
  /** Certificate, data sheet or test that the figures come from. */
  source: z.string().trim().min(1).max(500),
  /** The row that this one takes the place of; that one stays as it was. */
  supersedes: z.uuid().optional(),
};

const materialFigures = {
  kind: z.literal('material'),
  yieldStrengthMPa: strengthMPa,
  tensileStrengthMPa: strengthMPa,
};

const lubricantFigures = {
  kind: z.literal('lubricant'),
  threadFriction: frictionRangeSchema,
  bearingFriction: frictionRangeSchema,
};

/** Who put a row in, and when; told by the house, never by the sender. */
const kept = {
  by: z.strictObject({ id: z.uuid(), name: z.string().min(1) }),
  addedAt: z.iso.datetime({ precision: 3 }),
};

/** A row as somebody writes it. */
export const newOwnRowSchema = z
  .discriminatedUnion('kind', [
    z.strictObject({ ...written, ...materialFigures }),
    z.strictObject({ ...written, ...lubricantFigures }),
  ])
  .refine((row) => row.kind !== 'material' || row.yieldStrengthMPa <= row.tensileStrengthMPa, {
    path: ['tensileStrengthMPa'],
    error: 'lies below the yield strength',
  });
export type NewOwnRow = z.infer<typeof newOwnRowSchema>;

/** The workshop's own bolt material or lubricant beside the shipped tables, with its source. Never edited. */
export const ownRowSchema = z.discriminatedUnion('kind', [
  z.strictObject({ ...written, ...materialFigures, ...kept }),
  z.strictObject({ ...written, ...lubricantFigures, ...kept }),
]);
export type OwnRow = z.infer<typeof ownRowSchema>;
export type OwnMaterial = Extract<OwnRow, { kind: 'material' }>;
export type OwnLubricant = Extract<OwnRow, { kind: 'lubricant' }>;

/** The rows that no other row has taken the place of. */
export function standingRows(rows: readonly OwnRow[]): readonly OwnRow[] {
  const superseded = new Set(rows.map(({ supersedes }) => supersedes));
  return rows.filter(({ id }) => !superseded.has(id));
}
