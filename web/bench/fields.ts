import { z } from 'zod';

/** What a figure may be where the schema bounds it at both ends, and what it is when nothing is typed. */
export interface FigureShape {
  readonly kind: 'number';
  readonly range?: readonly [number, number];
  readonly usual?: number;
}

/** What a field of a calculation takes, as far as a form has to know. */
export type Shape =
  | FigureShape
  | { readonly kind: 'text' }
  | { readonly kind: 'choice'; readonly options: readonly string[] }
  | { readonly kind: 'yes-no' }
  /** Numbers beside each other; where `mayBeLone`, one of them alone is a figure and no list. */
  | { readonly kind: 'numbers'; readonly mayBeLone?: boolean }
  /**
   * Numbers in lines. A matrix is a list of lines; of rounds a line with one number is a figure; of lists a single
   * line is the list itself.
   */
  | { readonly kind: 'lines'; readonly as: 'matrix' | 'rounds' | 'lists' }
  | { readonly kind: 'rows'; readonly fields: readonly Field[] }
  /** Fields that belong together and stand once; with variants only those of the one chosen. */
  | { readonly kind: 'group'; readonly fields: readonly Field[]; readonly variants?: Variants }
  /** A figure, or the figure with what is known of its uncertainty; `fields` are those of the latter. */
  | { readonly kind: 'uncertain'; readonly figure: FigureShape; readonly fields: readonly Field[] }
  /** A name, or the fields of what has none in the tables. */
  | { readonly kind: 'named'; readonly fields: readonly Field[] }
  /** Anything else is typed as JSON. */
  | { readonly kind: 'json' };

export interface Field {
  readonly name: string;
  readonly isNeeded: boolean;
  readonly shape: Shape;
}

/** Forms of one group: which of its fields each value of the deciding field has. */
export interface Variants {
  readonly by: string;
  readonly names: Readonly<Record<string, readonly string[]>>;
}

/** The fields of a group that stand once its deciding field is chosen. */
export function fieldsShown(
  fields: readonly Field[],
  variants: Variants | undefined,
  chosen: unknown,
): readonly Field[] {
  if (!variants) return fields;
  const names = (typeof chosen === 'string' && variants.names[chosen]) || [variants.by];
  return fields.filter((field) => names.includes(field.name));
}

const propertySchema = z.object({
  type: z.union([z.string(), z.array(z.string())]).optional(),
  enum: z.array(z.unknown()).optional(),
  const: z.unknown().optional(),
  items: z.unknown().optional(),
  anyOf: z.array(z.unknown()).optional(),
  oneOf: z.array(z.unknown()).optional(),
  minimum: z.number().optional(),
  exclusiveMinimum: z.number().optional(),
  maximum: z.number().optional(),
  exclusiveMaximum: z.number().optional(),
  default: z.unknown().optional(),
});
type Property = z.infer<typeof propertySchema>;

const objectSchema = z.object({
  type: z.literal('object'),
  properties: z.record(z.string(), z.unknown()),
  required: z.array(z.string()).default([]),
});

/**
 * The fields of a form, read off a JSON Schema of an object.
 *
 * @returns empty for a schema that is not an object with properties
 */
export function fieldsOf(jsonSchema: unknown): readonly Field[] {
  const read = objectSchema.safeParse(jsonSchema);
  if (!read.success) return [];
  return Object.entries(read.data.properties).map(([name, property]) => ({
    name,
    isNeeded: read.data.required.includes(name),
    shape: shapeOf(property),
  }));
}

/** Fields with those of their rows and groups. */
export const withInner = (fields: readonly Field[]): readonly Field[] =>
  fields.flatMap((field) => [field, ...('fields' in field.shape ? withInner(field.shape.fields) : [])]);

function shapeOf(property: unknown): Shape {
  const read = propertySchema.safeParse(property);
  if (!read.success) return { kind: 'json' };
  const { type, items, anyOf, oneOf } = read.data;
  const options = optionsOf(read.data);
  if (options) return { kind: 'choice', options };
  if (type === 'number' || type === 'integer') return figureOf(read.data);
  if (type === 'boolean') return { kind: 'yes-no' };
  if (type === 'string') return { kind: 'text' };
  if (oneOf) return variantsOf(oneOf);
  if (anyOf) return eitherOf(anyOf, read.data);
  if (type === 'object') return groupOf(property);
  return type === 'array' ? listOf(items) : { kind: 'json' };
}

/** Whole numbers are bounded by what a double holds; that is no range of the trade. */
const isBound = (bound: number | undefined): bound is number =>
  bound !== undefined && Math.abs(bound) < Number.MAX_SAFE_INTEGER;

function figureOf(property: Property): FigureShape {
  const from = property.minimum ?? property.exclusiveMinimum;
  const to = property.maximum ?? property.exclusiveMaximum;
  return {
    kind: 'number',
    ...(isBound(from) && isBound(to) ? { range: [from, to] as const } : {}),
    ...(typeof property.default === 'number' ? { usual: property.default } : {}),
  };
}

function eitherOf(ways: readonly unknown[], property: Property): Shape {
  const shapes = ways.map(shapeOf);
  const [figure, other] = shapes;
  if (shapes.every((shape) => shape.kind === 'number')) return figureOf(property);
  if (figure?.kind === 'text' && other?.kind === 'group') return { kind: 'named', fields: other.fields };
  if (shapes.length === 2 && figure?.kind === 'number' && other?.kind === 'numbers') {
    return { kind: 'numbers', mayBeLone: true };
  }
  if (shapes.length === 2 && figure?.kind === 'numbers' && other?.kind === 'lines')
    return { kind: 'lines', as: 'lists' };
  if (figure?.kind !== 'number' || other?.kind !== 'group' || shapes.length !== 2) return { kind: 'json' };
  const usual = figureOf(property).usual;
  return {
    kind: 'uncertain',
    figure: usual === undefined ? figure : { ...figure, usual },
    fields: other.fields,
  };
}

/** Objects told apart by a field that is constant in each: one group, of which the fields of one variant stand. */
function variantsOf(ways: readonly unknown[]): Shape {
  const all = ways.map(fieldsOf);
  const by = all[0]?.find((field) => field.shape.kind === 'choice' && field.shape.options.length === 1)?.name;
  const deciding = all.map((fields) => fields.find((field) => field.name === by)?.shape);
  const options = deciding.flatMap((shape) => (shape?.kind === 'choice' ? shape.options : []));
  if (by === undefined || options.length !== all.length) return { kind: 'json' };
  const merged = new Map<string, Field>([[by, { name: by, isNeeded: false, shape: { kind: 'choice', options } }]]);
  for (const field of all.flat()) if (!merged.has(field.name)) merged.set(field.name, field);
  const names = Object.fromEntries(
    options.map((option, index) => [option, (all[index] ?? []).map(({ name }) => name)]),
  );
  return { kind: 'group', fields: [...merged.values()], variants: { by, names } };
}

function groupOf(property: unknown): Shape {
  const fields = fieldsOf(property);
  return fields.length > 0 ? { kind: 'group', fields } : { kind: 'json' };
}

function optionsOf(property: Property): readonly string[] | undefined {
  const values = property.enum ?? ('const' in property ? [property.const] : []);
  const texts = values.filter((value) => typeof value === 'string');
  return texts.length > 0 && texts.length === values.length ? texts : undefined;
}

function listOf(items: unknown): Shape {
  const item = shapeOf(items);
  if (item.kind === 'number') return { kind: 'numbers' };
  if (item.kind === 'numbers') return { kind: 'lines', as: item.mayBeLone ? 'rounds' : 'matrix' };
  return item.kind === 'group' ? { kind: 'rows', fields: item.fields } : { kind: 'json' };
}
