import { z } from 'zod';
import { failed, invalid, ok, type Result } from '../failure/failure.ts';
import { boltFault, boltFaultInWords } from './bolt-fault.ts';
import { boltDimensions, type OwnThread } from './own-thread.ts';
import { readThread } from './read-thread.ts';

const strengthMPa = z.number().gt(0).max(3000);
const coefficient = z.number().gt(0).max(1);

/** Least and greatest coefficient found; 0 and above 1 are slips. */
export const frictionRangeSchema = z
  .strictObject({ lower: coefficient, upper: coefficient })
  .refine(({ lower, upper }) => lower <= upper, { path: ['upper'], error: 'lies below the lower figure' });
export type FrictionRange = z.infer<typeof frictionRangeSchema>;

const written = {
  id: z.uuid(),
  /** As it is chosen from a list: what it is, and of which batch; of a bolt its designation. */
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

const boltFigures = { kind: z.literal('bolt'), ...boltDimensions };

/** Who put a row in, and when; told by the house, never by the sender. */
const kept = {
  by: z.strictObject({ id: z.uuid(), name: z.string().min(1) }),
  addedAt: z.iso.datetime({ precision: 3 }),
};

const FREE_NAME = 'a designation that nothing else has';

/** A row as somebody writes it. */
export const newOwnRowSchema = z
  .discriminatedUnion('kind', [
    z.strictObject({ ...written, ...materialFigures }),
    z.strictObject({ ...written, ...lubricantFigures }),
    z.strictObject({ ...written, ...boltFigures }),
  ])
  .refine((row) => row.kind !== 'material' || row.yieldStrengthMPa <= row.tensileStrengthMPa, {
    path: ['tensileStrengthMPa'],
    error: 'lies below the yield strength',
  })
  .superRefine((row, context) => {
    if (row.kind !== 'bolt') return;
    const refuse = (field: string, message: string, expected: string) =>
      context.addIssue({ code: 'custom', path: [field], message, params: { expected } });
    if (readThread(row.name).ok) refuse('name', `“${row.name}” is a thread of the shipped tables.`, FREE_NAME);
    const fault = boltFault(row);
    if (!fault) return;
    const { message, expected } = boltFaultInWords(row, fault);
    refuse(fault.field, message, expected);
  });
export type NewOwnRow = z.infer<typeof newOwnRowSchema>;

/** The workshop's own bolt, material or lubricant beside the shipped tables, with its source. Never edited. */
export const ownMaterialSchema = z.strictObject({ ...written, ...materialFigures, ...kept });
const ownLubricantSchema = z.strictObject({ ...written, ...lubricantFigures, ...kept });
export const ownBoltSchema = z.strictObject({ ...written, ...boltFigures, ...kept });
export const ownRowSchema = z.discriminatedUnion('kind', [ownMaterialSchema, ownLubricantSchema, ownBoltSchema]);
export type OwnRow = z.infer<typeof ownRowSchema>;
export type OwnMaterial = Extract<OwnRow, { kind: 'material' }>;
export type OwnLubricant = Extract<OwnRow, { kind: 'lubricant' }>;
export type OwnBolt = Extract<OwnRow, { kind: 'bolt' }>;

/** The rows that no other row has taken the place of. */
export function standingRows(rows: readonly OwnRow[]): readonly OwnRow[] {
  const superseded = new Set(rows.map(({ supersedes }) => supersedes));
  return rows.filter(({ id }) => !superseded.has(id));
}

/** The bolt of a row as calculations take it. */
export function threadOfBolt({ name, ...bolt }: OwnBolt): OwnThread {
  const { id: _id, kind: _kind, source: _source, supersedes: _before, by: _by, addedAt: _at, ...dimensions } = bolt;
  return { designation: name, ...dimensions };
}

/**
 * Whether a row may stand beside those that are kept.
 *
 * @returns refused where it supersedes what is not there, is of another kind or was superseded before, so that there is
 *          never a choice of two newest ones; and where a bolt's designation is taken
 */
export function joinsRows(rows: readonly OwnRow[], row: NewOwnRow): Result<undefined> {
  const { kind, supersedes } = row;
  const standing = standingRows(rows);
  const before = rows.find(({ id }) => id === supersedes);
  if (supersedes !== undefined && before?.kind !== kind) {
    return failed({ kind: 'not-found', what: `own ${kind}`, id: supersedes });
  }
  if (before && !standing.includes(before)) {
    return failed({
      kind: 'conflict',
      message: `“${before.name}” was superseded before; look at the row that took its place, and supersede that one.`,
      current: rows.find((other) => other.supersedes === supersedes),
    });
  }
  const isTaken = standing.some((other) => other !== before && other.kind === 'bolt' && isSameName(other, row));
  if (kind !== 'bolt' || !isTaken) return ok(undefined);
  return invalid(
    'name',
    `There is an own bolt called “${row.name}” already.`,
    `${FREE_NAME}, or to supersede that bolt`,
  );
}

const tidyName = (name: string): string => name.toUpperCase().replaceAll(/\s+/g, ' ').trim();
/** Whether two rows are called alike; case and spacing make no difference. */
export const isSameName = (a: { readonly name: string }, b: { readonly name: string }): boolean =>
  tidyName(a.name) === tidyName(b.name);
