import { z } from 'zod';
import { NAMED_SHAPES } from './names.ts';

/** A JSON Schema (2020-12), which is what OpenAPI 3.1 uses. */
export type Shape = Readonly<Record<string, unknown>>;
type Way = 'input' | 'output';
type Named = Readonly<Record<string, Shape>>;

const COMPONENTS = '#/components/schemas/';
/** Marks a named shape that is sent otherwise than it is answered: fields with a default may be left out. */
const SENT = 'ToSend';

const registry = z.registry<{ id: string }>();
for (const [id, schema] of Object.entries(NAMED_SHAPES)) registry.add(schema, { id });

/** The format says it shorter than the pattern that holds it. */
const override = ({ jsonSchema }: { jsonSchema: z.core.JSONSchema.BaseSchema }): void => {
  if (jsonSchema.format !== undefined) delete jsonSchema.pattern;
};

function named(io: Way): Named {
  const made = z.toJSONSchema(registry, { io, override, uri: (id) => COMPONENTS + id });
  return Object.fromEntries(
    Object.entries(made.schemas).map(([name, { $id: _id, $schema: _schema, ...shape }]) => [name, shape]),
  );
}

const refersTo = (shape: Shape, name: string): boolean => JSON.stringify(shape).includes(`"${COMPONENTS}${name}"`);

/** Names whose shape differs between the ways, in themselves or in what they refer to. */
function differing(sent: Named, answered: Named): readonly string[] {
  const names = Object.keys(answered);
  let found = names.filter((name) => JSON.stringify(sent[name]) !== JSON.stringify(answered[name]));
  for (let before = -1; before < found.length; ) {
    before = found.length;
    found = names.filter((name) => found.includes(name) || found.some((other) => refersTo(answered[name]!, other)));
  }
  return found;
}

/** Shapes of the API: each named one once, all others in place. */
export interface Shapes {
  readonly sent: (schema: z.core.$ZodType) => Shape;
  readonly answered: (schema: z.core.$ZodType) => Shape;
  /** The named shapes that a document refers to, and those that they refer to in turn. */
  readonly componentsFor: (document: unknown) => Named;
}

export function shapes(): Shapes {
  const sent = named('input');
  const answered = named('output');
  const apart = differing(sent, answered);
  const asSent = (shape: Shape): Shape =>
    reread(shape, (text) =>
      apart.reduce((said, name) => said.replaceAll(`"${COMPONENTS}${name}"`, `"${COMPONENTS}${name}${SENT}"`), text),
    );
  const all = { ...answered, ...Object.fromEntries(apart.map((name) => [name + SENT, asSent(sent[name]!)])) };
  return {
    sent: (schema) => asSent(inPlace(schema, 'input')),
    answered: (schema) => inPlace(schema, 'output'),
    componentsFor: (document) => reachable(all, document),
  };
}

function reachable(all: Named, document: unknown): Named {
  const found = new Set<string>();
  const visit = (text: string): void => {
    for (const [name, shape] of Object.entries(all)) {
      if (found.has(name) || !text.includes(`"${COMPONENTS}${name}"`)) continue;
      found.add(name);
      visit(JSON.stringify(shape));
    }
  };
  visit(JSON.stringify(document));
  return Object.fromEntries(Object.entries(all).filter(([name]) => found.has(name)));
}

function inPlace(schema: z.core.$ZodType, io: Way): Shape {
  const name = registry.get(schema)?.id;
  if (name !== undefined) return { $ref: COMPONENTS + name };
  const {
    $schema: _schema,
    $defs: _defs,
    ...shape
  } = z.toJSONSchema(schema, { io, metadata: registry, override, unrepresentable: 'any' });
  return reread(shape, (text) => text.replaceAll('"#/$defs/', `"${COMPONENTS}`));
}

const reread = (shape: Shape, change: (text: string) => string): Shape =>
  z.record(z.string(), z.unknown()).parse(JSON.parse(change(JSON.stringify(shape))));
