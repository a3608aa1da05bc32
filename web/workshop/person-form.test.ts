import { expect, it } from 'vitest';
import { readPerson } from './person-form.ts';

const FORM = { name: ' Ada Berg ', role: 'lead', pin: '4711', pinAgain: '4711' } as const;
const fieldsOf = (form: Parameters<typeof readPerson>[0]) => readPerson(form).faults.map((fault) => fault.field);

it('reads a person with a PIN typed twice alike', () => {
  expect(readPerson(FORM).person).toEqual({ name: 'Ada Berg', role: 'lead', pin: '4711' });
});

it.each(['', '123', '1234567890123', '12a4', ' 1234'])('refuses the PIN “%s”', (pin) => {
  expect(fieldsOf({ ...FORM, pin, pinAgain: pin })).toEqual(['pin']);
});

it('refuses a PIN that was typed differently the second time', () => {
  expect(fieldsOf({ ...FORM, pinAgain: '4712' })).toEqual(['pinAgain']);
});

it('needs a name', () => {
  expect(fieldsOf({ ...FORM, name: ' ' })).toEqual(['name']);
});
