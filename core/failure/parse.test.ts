import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { parse } from './parse.ts';

const schema = z.strictObject({
  torqueNm: z.number().describe('torque at the fastener, N·m'),
  leverMm: z.number().positive().describe('from drive to hand, mm').default(400),
  kind: z.enum(['snug', 'torque']).describe('what is done').optional(),
  pin: z
    .string()
    .regex(/^\d{4}$/, '4 digits')
    .optional(),
  rows: z
    .array(z.strictObject({ name: z.string().min(1).describe('what it is called') }))
    .max(2)
    .optional(),
  window: z
    .discriminatedUnion('form', [
      z.strictObject({ form: z.literal('limits'), lower: z.number().describe('lower limit') }),
      z.strictObject({ form: z.literal('percent'), percent: z.number() }),
    ])
    .optional(),
});

describe('parse', () => {
  it('gives what the schema reads, defaults filled in', () => {
    expect(parse(schema, { torqueNm: 5 })).toEqual({ ok: true, value: { torqueNm: 5, leverMm: 400 } });
  });

  it.each([
    [{}, 'torqueNm', 'It is missing.', 'a number: torque at the fastener, N·m'],
    [{ torqueNm: '5' }, 'torqueNm', 'It is “5”, not a number.', 'a number: torque at the fastener, N·m'],
    [{ torqueNm: Number.NaN }, 'torqueNm', 'It is NaN, not a number.', 'a number: torque at the fastener, N·m'],
    [{ torqueNm: 5, leverMm: -1 }, 'leverMm', '-1 is too small.', 'more than 0: from drive to hand, mm'],
    [{ torqueNm: 5, kind: 'tight' }, 'kind', '“tight” is not among the choices.', 'one of snug, torque: what is done'],
    [{ torqueNm: 5, torque: 5 }, 'torque', 'There is no field torque here.', 'no such field'],
    [{ torqueNm: 5, pin: '12' }, 'pin', '4 digits', '4 digits'],
    [
      { torqueNm: 5, rows: [{ name: '' }] },
      'rows[0].name',
      'It is too short.',
      'at least 1 character: what it is called',
    ],
    [{ torqueNm: 5, rows: [1] }, 'rows[0]', 'It is 1, not an object.', 'an object'],
    [
      { torqueNm: 5, rows: [{ name: 'a' }, { name: 'b' }, { name: 'c' }] },
      'rows',
      'It has too many elements.',
      'at most 2 elements',
    ],
    [{ torqueNm: 5, window: { form: 'limits' } }, 'window.lower', 'It is missing.', 'a number: lower limit'],
    [5, '(whole input)', 'It is 5, not an object.', 'an object'],
    [null, '(whole input)', 'It is null, not an object.', 'an object'],
  ])('refuses %j, naming field, fault and wish', (input, field, message, expected) => {
    expect(parse(schema, input)).toEqual({ ok: false, failure: { kind: 'invalid', field, message, expected } });
  });

  it('names the field that tells which form an input has', () => {
    expect(parse(schema, { torqueNm: 5, window: { form: 'none' } })).toMatchObject({
      failure: { field: 'window.form' },
    });
  });

  it('tells of a plain union the fault that lies furthest in', () => {
    const either = z.strictObject({ at: z.union([z.string(), z.strictObject({ x: z.number() })]) });
    expect(parse(either, { at: { x: 'no' } })).toMatchObject({
      failure: { field: 'at.x', message: 'It is “no”, not a number.' },
    });
  });
});
