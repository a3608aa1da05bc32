import * as fc from 'fast-check';
import { expect, it } from 'vitest';
import { z } from 'zod';
import { fieldsOf } from './fields.ts';
import { blankForm, formFrom, type Hand, inOtherUnit, readForm } from './input.ts';

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

const hand = (language: Hand['language']): Hand => ({ language, units: {} });

it('begins a needed choice with its first option and a needed list with one row', () => {
  expect(blankForm(FIELDS)).toMatchObject({ torqueNm: '', method: 'star', quantities: [{ name: '', value: '' }] });
});

it('reads figures in the language on screen', () => {
  const form = { ...blankForm(FIELDS), torqueNm: '12,5', samplesNm: '1,5; 2' };
  expect(readForm(FIELDS, form, hand('de')).input).toMatchObject({ torqueNm: 12.5, samplesNm: [1.5, 2] });
});

const ROUNDS = fieldsOf(
  z.toJSONSchema(
    z.strictObject({
      matrix: z.array(z.array(z.number())),
      targetsN: z.array(z.union([z.number(), z.array(z.number())])),
      order: z.union([z.array(z.number()), z.array(z.array(z.number()))]),
      finalN: z.union([z.number(), z.array(z.number())]),
      model: z
        .discriminatedUnion('kind', [
          z.strictObject({ kind: z.literal('ring'), heightMm: z.number() }),
          z.strictObject({ kind: z.literal('strip'), widthMm: z.number() }),
        ])
        .optional(),
    }),
  ),
);

it.each([
  {
    matrix: [
      [1.5, -0.3],
      [-0.3, 1],
    ],
    targetsN: [30, [60, 70.5], 100],
    order: [1, 2],
    finalN: 5,
  },
  { matrix: [[1]], targetsN: [100], order: [1], finalN: [5, 6] },
  {
    matrix: [[1]],
    targetsN: [[1, 2]],
    order: [
      [1, 2],
      [2, 1],
    ],
    finalN: 2,
    model: { kind: 'strip', widthMm: 3.5 },
  },
])('reads back numbers in lines as they were filled in: %j', (given) => {
  expect(readForm(ROUNDS, formFrom(ROUNDS, given, hand('de')), hand('de'))).toEqual({ input: given, unreadable: [] });
});

it('leaves out what belongs to another form of a group than the one chosen', () => {
  const form = { model: [{ kind: 'ring', heightMm: '3', widthMm: '4' }] };
  expect(readForm(ROUNDS, form, hand('en')).input).toEqual({ model: { kind: 'ring', heightMm: 3 } });
});

it('names the fields that cannot be read and gives them no value', () => {
  const form = { torqueNm: '12,5', quantities: [{ name: 'torque', value: 'x' }] };
  const read = readForm(FIELDS, form, hand('en'));
  expect(read.unreadable).toEqual(['torqueNm', 'quantities[0].value']);
  expect(read.input).not.toHaveProperty('torqueNm');
});

it('takes an empty field for no input', () => {
  expect(readForm(FIELDS, { torqueNm: '  ' }, hand('en'))).toEqual({ input: {}, unreadable: [] });
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
    fc.property(
      input,
      fc.constantFrom('en' as const, 'de' as const, 'fr' as const, 'es' as const),
      (given, language) => {
        expect(readForm(FIELDS, formFrom(FIELDS, given, hand(language)), hand(language))).toEqual({
          input: given,
          unreadable: [],
        });
      },
    ),
    { seed: 7 },
  );
});

it('leaves out of a link what fits no field', () => {
  expect(formFrom(FIELDS, { torqueNm: 'many', stranger: 1 }, hand('en'))).toEqual(blankForm(FIELDS));
});

const figure = z.number().gt(0).max(1);
const told = z.union([
  figure,
  z.strictObject({
    value: figure,
    standardUncertainty: z.number(),
    distribution: z.enum(['normal', 'rectangular']).default('normal'),
  }),
]);
const UNCERTAIN = fieldsOf(z.toJSONSchema(z.strictObject({ frictionNm: told }), { io: 'input' }));

it('reads a figure alone as a number, and with its uncertainty as both', () => {
  const typed = (value: string, standardUncertainty: string) =>
    readForm(UNCERTAIN, { frictionNm: [{ value, standardUncertainty, distribution: '' }] }, hand('de')).input;
  expect(typed('0,12', '')).toEqual({ frictionNm: 0.12 });
  expect(typed('0,12', '0,01')).toEqual({ frictionNm: { value: 0.12, standardUncertainty: 0.01 } });
  expect(typed('', '0,01')).toEqual({});
});

it('fills a figure with and without its uncertainty', () => {
  const told = { value: 0.5, standardUncertainty: 0.25, distribution: 'rectangular' };
  for (const frictionNm of [0.5, told]) {
    const form = formFrom(UNCERTAIN, { frictionNm }, hand('fr'));
    expect(readForm(UNCERTAIN, form, hand('fr')).input).toEqual({ frictionNm });
  }
});

it('reads figure and uncertainty in the unit that was chosen for the field', () => {
  const inPounds: Hand = { language: 'en', units: { frictionNm: 'lbf·in' } };
  const form = formFrom(UNCERTAIN, { frictionNm: { value: 0.9, standardUncertainty: 0.1 } }, inPounds);
  // 1 lbf·in = 0.1129848290276167 N·m: NIST SP 811:2008, appendix B.
  expect(form).toEqual({ frictionNm: [{ value: '7.96567121', standardUncertainty: '0.885074579', distribution: '' }] });
  expect(readForm(UNCERTAIN, form, inPounds).input['frictionNm']).toMatchObject({
    value: expect.closeTo(0.9, 8),
    standardUncertainty: expect.closeTo(0.1, 8),
  });
});

it('writes a figure in another unit and back as it was', () => {
  const before = hand('en');
  const after: Hand = { language: 'en', units: { torqueNm: 'lbf·ft' } };
  const form = { ...blankForm(FIELDS), torqueNm: '80' };
  const changed = inOtherUnit(FIELDS, form, 'torqueNm', before, after);
  expect(changed['torqueNm']).toBe('59.0049719');
  expect(inOtherUnit(FIELDS, changed, 'torqueNm', after, before)).toEqual(form);
});

it('leaves as typed what cannot be read when the unit changes', () => {
  const form = { ...blankForm(FIELDS), torqueNm: 'eighty' };
  expect(inOtherUnit(FIELDS, form, 'torqueNm', hand('en'), hand('en'))).toEqual(form);
});

it('takes a name as it is typed, or the figures in place of it', () => {
  const own = z.strictObject({ designation: z.string(), pitchMm: z.number(), holeMm: z.number().optional() });
  const fields = fieldsOf(z.toJSONSchema(z.strictObject({ thread: z.union([z.string(), own]) }), { io: 'input' }));
  for (const input of [{ thread: 'M12' }, { thread: { designation: 'Tie rod 23', pitchMm: 1.5 } }]) {
    expect(readForm(fields, formFrom(fields, input, hand('de')), hand('de'))).toEqual({ input, unreadable: [] });
  }
  const form = { thread: [{ designation: 'Tie rod 23', pitchMm: 'x' }] };
  expect(readForm(fields, form, hand('de')).unreadable).toEqual(['thread.pitchMm']);
});
