import { z } from 'zod';

/**
 * What a schema's `.describe()` says of the place where an input was refused.
 *
 * @param path from the whole input down to the refused part
 */
export function describedAt(schema: unknown, path: readonly PropertyKey[]): string | undefined {
  const bare = unwrapped(schema);
  const [step, ...further] = path;
  if (step === undefined) return described(schema);
  if (bare instanceof z.ZodObject) return describedAt(bare.shape[String(step)], further);
  if (bare instanceof z.ZodArray) return describedAt(bare.element, further);
  if (bare instanceof z.ZodUnion) {
    return bare.options.map((option) => describedAt(option, path)).find((text) => text !== undefined);
  }
  return undefined;
}

/** The nearest description from the outside in. */
function described(schema: unknown): string | undefined {
  if (!(schema instanceof z.ZodType)) return undefined;
  if (schema.description !== undefined) return schema.description;
  const inner = innerOf(schema);
  return inner === undefined ? undefined : described(inner);
}

function unwrapped(schema: unknown): unknown {
  const inner = innerOf(schema);
  return inner === undefined ? schema : unwrapped(inner);
}

function innerOf(schema: unknown): unknown {
  const isWrapper =
    schema instanceof z.ZodOptional ||
    schema instanceof z.ZodDefault ||
    schema instanceof z.ZodNullable ||
    schema instanceof z.ZodReadonly;
  return isWrapper ? schema.def.innerType : undefined;
}
