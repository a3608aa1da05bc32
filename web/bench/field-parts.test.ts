import { CALCULATIONS, inputJsonSchema } from '@clampwright/core/calculations';
import { describe, expect, it } from 'vitest';
import { partsOf } from './field-parts.ts';
import { fieldsOf } from './fields.ts';

const names = (form: readonly { readonly name: string }[]) => form.map(({ name }) => name).toSorted();
const long = CALCULATIONS.map(({ name }) => ({ name, fields: fieldsOf(inputJsonSchema(name)) })).filter(
  ({ fields }) => fields.length > 24,
);

it('finds the forms of whole joints long', () => {
  expect(long.map(({ name }) => name)).toEqual(['tightening-angle', 'joint-check']);
});

describe.each(long)('the parts of $name', ({ fields }) => {
  it('hold every field once', () => {
    expect(names((partsOf(fields) ?? []).flatMap((part) => part.fields))).toEqual(names(fields));
  });
});

it('leaves a short form whole', () => {
  expect(partsOf(fieldsOf(inputJsonSchema('assembly-torque')))).toBeUndefined();
});

it('leaves a long form whole when it does not know each of its fields', () => {
  const strange = { name: 'strange', isNeeded: false, shape: { kind: 'text' } } as const;
  expect(partsOf([...fieldsOf(inputJsonSchema('joint-check')), strange])).toBeUndefined();
});
