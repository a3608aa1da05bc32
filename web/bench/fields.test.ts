import { expect, it } from 'vitest';
import { z } from 'zod';
import { fieldsOf } from './fields.ts';

const fieldsIn = (schema: z.ZodType) => fieldsOf(z.toJSONSchema(schema, { io: 'input' }));

it('makes a field of each property and tells which are needed', () => {
  const fields = fieldsIn(z.strictObject({ torqueNm: z.number().positive(), note: z.string().optional() }));
  expect(fields).toEqual([
    { name: 'torqueNm', isNeeded: true, shape: { kind: 'number' } },
    { name: 'note', isNeeded: false, shape: { kind: 'text' } },
  ]);
});

it('does not need what has a default', () => {
  expect(fieldsIn(z.strictObject({ count: z.number().int().default(8) }))[0]?.isNeeded).toBe(false);
});

it('offers the values of an enumeration', () => {
  const [field] = fieldsIn(z.strictObject({ method: z.enum(['star', 'circular']) }));
  expect(field?.shape).toEqual({ kind: 'choice', options: ['star', 'circular'] });
});

it('makes rows of a list of objects and one field of a list of numbers', () => {
  const row = z.strictObject({ name: z.string(), lower: z.number().optional() });
  const fields = fieldsIn(z.strictObject({ quantities: z.array(row), samplesNm: z.array(z.number()) }));
  expect(fields.map((field) => field.shape.kind)).toEqual(['rows', 'numbers']);
  const [rows] = fields;
  expect(rows?.shape.kind === 'rows' && rows.shape.fields.map(({ name, isNeeded }) => [name, isNeeded])).toEqual([
    ['name', true],
    ['lower', false],
  ]);
});

it('leaves what no field fits to JSON', () => {
  const layout = z.discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('line'), count: z.number() }),
    z.strictObject({ kind: z.literal('circle'), diameterMm: z.number() }),
  ]);
  expect(fieldsIn(z.strictObject({ layout }))[0]?.shape).toEqual({ kind: 'json' });
});

it('knows a figure that may carry its uncertainty', () => {
  const uncertain = z.strictObject({
    value: z.number(),
    standardUncertainty: z.number(),
    distribution: z.enum(['normal', 'triangular']).default('normal'),
  });
  const [field] = fieldsIn(z.strictObject({ torqueNm: z.union([z.number(), uncertain]) }));
  expect(field?.shape).toEqual({ kind: 'measured', distributions: ['normal', 'triangular'] });
});

it('keeps fields together that stand in one object', () => {
  const [field] = fieldsIn(z.strictObject({ shares: z.strictObject({ pitch: z.number() }) }));
  expect(field?.shape).toMatchObject({ kind: 'group', fields: [{ name: 'pitch' }] });
});

it('has no fields for a schema that is no object', () => {
  expect(fieldsOf({ type: 'number' })).toEqual([]);
  expect(fieldsOf(undefined)).toEqual([]);
});
