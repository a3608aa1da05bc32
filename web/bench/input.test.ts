import * as fc from 'fast-check';
import { expect, it } from 'vitest';
import { z } from 'zod';
import { fieldsOf } from './fields.ts';
import { blankForm, formFrom, readForm } from './input.ts';

const quantity = z.strictObject({ name: z.string(), value: z.number(), lower: z.number().optional() });
const FIELDS = fieldsOf(
  z.toJSONSchema(
    z.strictObject({
      torqueNm: z.number(),
      method: z.enum(['star', 'circular']),
      edgeOnly: z.boolean().optional(),
      quantities: z.array(quantity),
      samplesNm: z.array(z.number()).optional(),
    }),
    { io: 'input' },
  ),
);

it('begins a needed choice with its first option and a needed list with one row', () => {
  expect(blankForm(FIELDS)).toMatchObject({ torqueNm: '', method: 'star', quantities: [{ name: '', value: '' }] });
});

it('reads figures in the language on screen', () => {
  const form = { ...blankForm(FIELDS), torqueNm: '12,5', samplesNm: '1,5; 2' };
  expect(readForm(FIELDS, form, 'de').input).toMatchObject({ torqueNm: 12.5, samplesNm: [1.5, 2] });
});

it('names the fields that cannot be read and gives them no value', () => {
  const form = { torqueNm: '12,5', quantities: [{ name: 'torque', value: 'x' }] };
  const read = readForm(FIELDS, form, 'en');
  expect(read.unreadable).toEqual(['torqueNm', 'quantities[0].value']);
  expect(read.input).not.toHaveProperty('torqueNm');
});

it('takes an empty field for no input', () => {
  expect(readForm(FIELDS, { torqueNm: '  ' }, 'en')).toEqual({ input: {}, unreadable: [] });
});

it('fills fields from an input so that the same input is read back, in every language', () => {
  const input = fc.record({
    torqueNm: fc.integer({ min: 1, max: 1e9 }).map((thousandths) => thousandths / 1000),
    method: fc.constantFrom('star', 'circular'),
    edgeOnly: fc.boolean(),
    quantities: fc.array(fc.record({ name: fc.constant('torque'), value: fc.integer() }), {
      minLength: 1,
      maxLength: 4,
    }),
  });
  fc.assert(
    fc.property(input, fc.constantFrom('en', 'de', 'fr', 'es'), (given, language) => {
      expect(readForm(FIELDS, formFrom(FIELDS, given, language), language)).toEqual({ input: given, unreadable: [] });
    }),
    { seed: 7 },
  );
});

it('leaves out of a link what fits no field', () => {
  expect(formFrom(FIELDS, { torqueNm: 'many', stranger: 1 }, 'en')).toEqual(blankForm(FIELDS));
});
