import { z } from 'zod';
import { invalid, ok, type Result } from '../failure/failure.ts';
import {
  isSameName,
  type OwnLubricant,
  type OwnMaterial,
  type OwnRow,
  standingRows,
  threadOfBolt,
} from '../fastener/own-row.ts';
import { isKnownClass } from '../fastener/property-class.ts';
import { readThread } from '../fastener/read-thread.ts';
import { HALF_WIDTH } from '../statistics/distribution.ts';
import type { Calculation } from './calculation.ts';

type Fields = Readonly<Record<string, unknown>>;
type Kind = OwnRow['kind'];

/** Fields in which a row of the workshop's own may be named; a lubricant stands in place of coefficients. */
const FIELD_OF = { bolt: 'thread', material: 'propertyClass', lubricant: 'lubricant' } as const satisfies Record<
  Kind,
  string
>;

/** Whether an input, or one of several, names what no shipped table has, so that own rows are worth looking up. */
export const namesOwnRow = (input: unknown): boolean =>
  (Array.isArray(input) ? input : [input]).some((one: unknown) => {
    const fields = fieldsOf(one);
    const { thread, propertyClass, lubricant } = fields;
    return (
      (typeof thread === 'string' && !readThread(thread).ok) ||
      (typeof propertyClass === 'string' && !isKnownClass(propertyClass)) ||
      typeof lubricant === 'string'
    );
  });

/**
 * Puts the figures of own rows in the place of their names: `thread` may be the designation of an own bolt,
 * `propertyClass` the name of an own material, `lubricant` that of an own lubricant. Figures told beside a name stay, and
 * shipped rows come before own ones.
 *
 * @returns the input as the calculation takes it; refused where a lubricant is not there, or a name is that of several
 */
export function withOwnRows({ input: schema }: Calculation, input: unknown, rows: readonly OwnRow[]): Result<unknown> {
  if (rows.length === 0 || !namesOwnRow(input)) return ok(input);
  const taken = schema instanceof z.ZodObject ? schema.shape : {};
  const standing = standingRows(rows);
  let told = fieldsOf(input);
  for (const kind of ['bolt', 'material', 'lubricant'] as const) {
    const found = named(kind, told, standing);
    if (!found.ok) return found;
    if (found.value) told = put(found.value, told, taken);
  }
  return ok(told);
}

const fieldsOf = (input: unknown): Fields => z.record(z.string(), z.unknown()).safeParse(input).data ?? {};

/** The row that a field names; none where the field says something else. */
function named(kind: Kind, told: Fields, standing: readonly OwnRow[]): Result<OwnRow | undefined> {
  const field = FIELD_OF[kind];
  const name = told[field];
  if (typeof name !== 'string' || isShipped(kind, name)) return ok(undefined);
  const ofKind = standing.filter((row) => row.kind === kind);
  const [found, another] = ofKind.filter((row) => isSameName(row, { name }));
  if (another) {
    return invalid(field, `More than one own ${kind} is called “${name}”.`, 'a name that one alone has');
  }
  // What else a thread or class is wrong about, their own readers tell better.
  if (found || kind !== 'lubricant') return ok(found);
  const names = ofKind.map((row) => row.name).join(', ');
  return invalid(field, `There is no own lubricant “${name}”.`, names === '' ? 'left out' : `one of ${names}`);
}

const isShipped = (kind: Kind, name: string): boolean =>
  (kind === 'bolt' && readThread(name).ok) || (kind === 'material' && isKnownClass(name));

type Shape = Readonly<Record<string, z.core.$ZodType>>;

function put(row: OwnRow, told: Fields, taken: Shape): Fields {
  if (row.kind === 'bolt') return { ...told, thread: threadOfBolt(row) };
  const { [FIELD_OF[row.kind]]: _name, ...rest } = told;
  const figures = row.kind === 'material' ? strengths(row) : frictions(row, taken);
  const fitting = Object.entries(figures).filter(([field]) => field in taken);
  return fitting.length === 0 ? told : { ...Object.fromEntries(fitting), ...rest };
}

const strengths = ({ name, yieldStrengthMPa, tensileStrengthMPa }: OwnMaterial): Fields => ({
  proofStressMPa: yieldStrengthMPa,
  yieldStrengthMPa,
  tensileStrengthMPa,
  materialName: name,
});

/** The range where a calculation takes one, else the lowest, as when a target is derived: less friction would overload. */
function frictions({ threadFriction, bearingFriction }: OwnLubricant, taken: Shape): Fields {
  const lowest = Math.min(threadFriction.lower, bearingFriction.lower);
  const highest = Math.max(threadFriction.upper, bearingFriction.upper);
  return {
    threadFriction: spread(threadFriction, taken['threadFriction']),
    bearingFriction: spread(bearingFriction, taken['bearingFriction']),
    frictionLow: lowest,
    frictionHigh: highest,
    lowestFriction: lowest,
    highestFriction: highest,
  };
}

/** @source JCGM 100:2008, 4.3.7: of a quantity known by its limits alone, the middle with half the width over √3 */
function spread({ lower, upper }: OwnLubricant['threadFriction'], schema: z.core.$ZodType | undefined): unknown {
  const uncertain = {
    value: (lower + upper) / 2,
    standardUncertainty: (upper - lower) / 2 / HALF_WIDTH.rectangular,
    distribution: 'rectangular',
  };
  return schema && z.safeParse(schema, uncertain).success ? uncertain : lower;
}
