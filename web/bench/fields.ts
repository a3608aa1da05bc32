import { z } from 'zod';

/** What a field of a calculation takes, as far as a form has to know. */
export type Shape =
  | { readonly kind: 'number' }
  | { readonly kind: 'text' }
  | { readonly kind: 'choice'; readonly options: readonly string[] }
  | { readonly kind: 'yes-no' }
  | { readonly kind: 'numbers' }
  | { readonly kind: 'rows'; readonly fields: readonly Field[] }
  /** A figure that may carry its uncertainty. */
  | { readonly kind: 'measured'; readonly distributions: readonly string[] }
  /** Fields that belong together; typed as JSON, shown under one name. */
  | { readonly kind: 'group'; readonly fields: readonly Field[] }
  /** Anything else is typed as JSON. */
  | { readonly kind: 'json' };

export interface Field {
  readonly name: string;
  readonly isNeeded: boolean;
  readonly shape: Shape;
}

const propertySchema = z.object({
  type: z.union([z.string(), z.array(z.string())]).optional(),
  enum: z.array(z.unknown()).optional(),
  const: z.unknown().optional(),
  items: z.unknown().optional(),
  anyOf: z.array(z.unknown()).optional(),
});

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

function shapeOf(property: unknown): Shape {
  const read = propertySchema.safeParse(property);
  if (!read.success) return { kind: 'json' };
  const { type, items, anyOf } = read.data;
  const options = optionsOf(read.data);
  if (options) return { kind: 'choice', options };
  if (type === 'number' || type === 'integer') return { kind: 'number' };
  if (type === 'boolean') return { kind: 'yes-no' };
  if (type === 'string') return { kind: 'text' };
  if (type === 'array') return listOf(items);
  const fields = fieldsOf(property);
  if (fields.length > 0) return { kind: 'group', fields };
  return anyOf === undefined ? { kind: 'json' } : measuredOf(anyOf);
}

/** `80`, or `{ value: 80, standardUncertainty: 1.6, distribution: 'normal' }`. */
function measuredOf(forms: readonly unknown[]): Shape {
  const shapes = forms.map(shapeOf);
  const isFigure = shapes.some(({ kind }) => kind === 'number');
  const fields = shapes.flatMap((shape) => (shape.kind === 'group' ? shape.fields : []));
  const distribution = fields.find(({ name }) => name === 'distribution')?.shape;
  if (!isFigure || !fields.some(({ name }) => name === 'standardUncertainty')) return { kind: 'json' };
  return { kind: 'measured', distributions: distribution?.kind === 'choice' ? distribution.options : [] };
}

function optionsOf(property: z.infer<typeof propertySchema>): readonly string[] | undefined {
  const values = property.enum ?? ('const' in property ? [property.const] : []);
  const texts = values.filter((value) => typeof value === 'string');
  return texts.length > 0 && texts.length === values.length ? texts : undefined;
}

function listOf(items: unknown): Shape {
  const item = shapeOf(items);
  if (item.kind === 'number') return { kind: 'numbers' };
  const fields = fieldsOf(items);
  return fields.length > 0 ? { kind: 'rows', fields } : { kind: 'json' };
}
