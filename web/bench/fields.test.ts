import { expect, it } from 'vitest';
import { z } from 'zod';
import { fieldsOf, fieldsShown, withInner } from './fields.ts';

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

it('makes a name, or figures in place of it, of a string or an object', () => {
  const own = z.strictObject({ designation: z.string(), pitchMm: z.number() });
  const [field] = fieldsIn(z.strictObject({ thread: z.union([z.string(), own]) }));
  expect(field?.shape.kind === 'named' && field.shape.fields.map(({ name }) => name)).toEqual([
    'designation',
    'pitchMm',
  ]);
});

it('makes one group of forms that a constant tells apart, and shows the fields of the one chosen', () => {
  const layout = z.discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('line'), count: z.number() }),
    z.strictObject({ kind: z.literal('circle'), count: z.number(), diameterMm: z.number() }),
  ]);
  const shape = fieldsIn(z.strictObject({ layout }))[0]?.shape;
  if (shape?.kind !== 'group') throw new Error('no group');
  const shown = (chosen: unknown) => fieldsShown(shape.fields, shape.variants, chosen).map(({ name }) => name);
  expect(shown('')).toEqual(['kind']);
  expect(shown('line')).toEqual(['kind', 'count']);
  expect(shown('circle')).toEqual(['kind', 'count', 'diameterMm']);
});

it('takes numbers in lines for matrices, rounds and orders', () => {
  const list = z.array(z.number());
  const fields = fieldsIn(
    z.strictObject({
      matrix: z.array(list),
      targetsN: z.array(z.union([z.number(), list])),
      order: z.union([list, z.array(list)]),
      startN: z.union([z.number(), list]),
    }),
  );
  expect(fields.map(({ shape }) => shape)).toEqual([
    { kind: 'lines', as: 'matrix' },
    { kind: 'lines', as: 'rounds' },
    { kind: 'lines', as: 'lists' },
    { kind: 'numbers', mayBeLone: true },
  ]);
});

it('leaves what no field fits to JSON', () => {
  expect(fieldsIn(z.strictObject({ odd: z.array(z.array(z.string())) }))[0]?.shape).toEqual({ kind: 'json' });
});

it('keeps fields together that stand in one object', () => {
  const [field] = fieldsIn(z.strictObject({ shares: z.strictObject({ pitch: z.number() }) }));
  expect(field?.shape).toMatchObject({ kind: 'group', fields: [{ name: 'pitch' }] });
});

it('has no fields for a schema that is no object', () => {
  expect(fieldsOf({ type: 'number' })).toEqual([]);
  expect(fieldsOf(undefined)).toEqual([]);
});

it('tells the range of a figure that is bounded at both ends, and what it is unless typed', () => {
  const shapes = fieldsIn(
    z.strictObject({
      friction: z.number().gt(0).max(1),
      share: z.number().gt(0).max(1).default(0.9),
      torqueNm: z.number().positive(),
      count: z.number().int(),
    }),
  ).map(({ shape }) => shape);
  expect(shapes).toEqual([
    { kind: 'number', range: [0, 1] },
    { kind: 'number', range: [0, 1], usual: 0.9 },
    { kind: 'number' },
    { kind: 'number' },
  ]);
});

it('knows a figure that may come with its uncertainty', () => {
  const told = z.union([
    z.number().gt(0).max(1),
    z.strictObject({ value: z.number(), standardUncertainty: z.number() }),
  ]);
  const [field] = fieldsIn(z.strictObject({ friction: told }));
  expect(field?.shape).toMatchObject({ kind: 'uncertain', figure: { range: [0, 1] } });
});

it('takes a choice of figures for a figure, and an object for a group', () => {
  const digits = z.union([z.literal(1), z.literal(2)]).default(1);
  const fields = fieldsIn(z.strictObject({ digits, shares: z.strictObject({ pitch: z.number() }) }));
  expect(fields.map(({ shape }) => shape.kind)).toEqual(['number', 'group']);
  expect(withInner(fields).map(({ name }) => name)).toEqual(['digits', 'shares', 'pitch']);
});
