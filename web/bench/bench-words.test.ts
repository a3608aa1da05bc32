import { CALCULATIONS, type CalculationName, inputJsonSchema, outputJsonSchema } from '@clampwright/core/calculations';
import { describe, expect, it } from 'vitest';
import lead from '../words/lead.en.json' with { type: 'json' };
import { cautionKeys } from './caution-keys.ts';
import { fieldsOf, withInner } from './fields.ts';

const { field: fieldWords, value: valueWords, caution } = lead.bench;

const fieldsFor = (name: CalculationName) => [
  ...withInner(fieldsOf(inputJsonSchema(name))),
  ...withInner(fieldsOf(outputJsonSchema(name))),
];

it('keep no word for a field that no calculation has', () => {
  const known = new Set(CALCULATIONS.flatMap(({ name }) => fieldsFor(name).map((field) => field.name)));
  expect([...Object.keys(fieldWords), ...Object.keys(lead.bench.hint)].filter((name) => !known.has(name))).toEqual([]);
});

describe.each(CALCULATIONS)('the bench words of $name', ({ name, cautions }) => {
  const fields = fieldsFor(name);

  it('name every field that it takes and gives', () => {
    expect(fields.length).toBeGreaterThan(1);
    expect(fields.map((field) => field.name).filter((known) => !(known in fieldWords))).toEqual([]);
  });

  it('name every value that can be chosen or given, but for standards and units', () => {
    const isName = (value: string) => /[\d·]/.test(value);
    const values = fields
      .flatMap(({ shape }) => (shape.kind === 'choice' ? shape.options : []))
      .filter((value) => !isName(value));
    expect(values.filter((value) => !(value in valueWords))).toEqual([]);
  });

  it('tell its cautions as the registry does', () => {
    expect(cautionKeys(name).map((key) => caution[key])).toEqual(cautions);
  });

  it('leave no field to be typed as JSON', () => {
    expect(fieldsOf(inputJsonSchema(name)).filter(({ shape }) => shape.kind === 'json')).toEqual([]);
  });
});
