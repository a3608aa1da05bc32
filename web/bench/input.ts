import { type Language, readNumber, showNumber } from '@clampwright/core/quantity';
import type { Field, Shape } from './fields.ts';
import { isRecord } from './is-record.ts';
import { readMeasured, showMeasured } from './measured.ts';

/** What stands in the fields: text, or rows of texts. */
export interface BenchForm {
  readonly [name: string]: string | readonly BenchForm[];
}

export interface BenchReading {
  /** The input for the calculation; fields that cannot be read are left out. */
  readonly input: Readonly<Record<string, unknown>>;
  /** Paths of the fields whose text cannot be read, as the registry names them. */
  readonly unreadable: readonly string[];
}

/** Empty fields: every needed list begins with one row, a needed choice with its first option. */
export const blankForm = (fields: readonly Field[]): BenchForm =>
  Object.fromEntries(fields.map(({ name, isNeeded, shape }) => [name, blankValue(shape, isNeeded)]));

function blankValue(shape: Shape, isNeeded: boolean): string | readonly BenchForm[] {
  if (shape.kind === 'rows') return isNeeded ? [blankForm(shape.fields)] : [];
  return shape.kind === 'choice' && isNeeded ? (shape.options[0] ?? '') : '';
}

/** Reads what was typed in the language on screen; an empty field is no input. */
export function readForm(fields: readonly Field[], form: BenchForm, language: Language, path = ''): BenchReading {
  const input: Record<string, unknown> = {};
  const unreadable: string[] = [];
  for (const { name, shape } of fields) {
    const read = readValue(shape, form[name] ?? '', language, `${path}${name}`);
    unreadable.push(...read.unreadable);
    if (read.value !== undefined) input[name] = read.value;
  }
  return { input, unreadable };
}

interface ValueReading {
  readonly value?: unknown;
  readonly unreadable: readonly string[];
}

function readValue(shape: Shape, typed: BenchForm[string], language: Language, path: string): ValueReading {
  if (typeof typed !== 'string') return readRows(shape, typed, language, path);
  if (typed.trim() === '') return { unreadable: [] };
  switch (shape.kind) {
    case 'number':
      return numbersIn([typed], language, path, ([value]) => value);
    case 'numbers':
      return numbersIn(typed.split(/[;\n\t]/), language, path, (values) => values);
    case 'yes-no':
      return { value: typed === 'yes', unreadable: [] };
    case 'measured': {
      const value = readMeasured(typed, shape.distributions, language);
      return value === undefined ? { unreadable: [path] } : { value, unreadable: [] };
    }
    case 'json':
    case 'group':
      return jsonIn(typed, path);
    case 'text':
    case 'choice':
      return { value: typed.trim(), unreadable: [] };
    case 'rows':
      return { unreadable: [] };
  }
}

function readRows(shape: Shape, rows: readonly BenchForm[], language: Language, path: string): ValueReading {
  if (shape.kind !== 'rows' || rows.length === 0) return { unreadable: [] };
  const read = rows.map((row, index) => readForm(shape.fields, row, language, `${path}[${index}].`));
  return { value: read.map((row) => row.input), unreadable: read.flatMap((row) => row.unreadable) };
}

function numbersIn(
  texts: readonly string[],
  language: Language,
  path: string,
  pick: (values: readonly number[]) => unknown,
): ValueReading {
  const values = texts.filter((text) => text.trim() !== '').map((text) => readNumber(text, language));
  const known = values.flatMap((read) => (read.ok ? [read.value] : []));
  return known.length === values.length ? { value: pick(known), unreadable: [] } : { unreadable: [path] };
}

function jsonIn(typed: string, path: string): ValueReading {
  try {
    return { value: JSON.parse(typed), unreadable: [] };
  } catch {
    // The caller tells it at the field.
    return { unreadable: [path] };
  }
}

/** Fields filled from an input, such as one that came in a link; what does not fit a field is left out. */
export function formFrom(
  fields: readonly Field[],
  input: Readonly<Record<string, unknown>>,
  language: Language,
): BenchForm {
  const blank = blankForm(fields);
  const filled = fields.flatMap(({ name, shape }) => {
    const value = input[name];
    return value === undefined ? [] : [[name, typedFrom(shape, value, language)] as const];
  });
  return { ...blank, ...Object.fromEntries(filled) };
}

function typedFrom(shape: Shape, value: unknown, language: Language): string | readonly BenchForm[] {
  const number = (figure: unknown) => (typeof figure === 'number' ? showNumber(figure, language) : '');
  switch (shape.kind) {
    case 'number':
      return number(value);
    case 'numbers':
      return Array.isArray(value) ? value.map(number).join('; ') : '';
    case 'yes-no':
      return value === true ? 'yes' : 'no';
    case 'measured':
      return showMeasured(value, language);
    case 'json':
    case 'group':
      return JSON.stringify(value);
    case 'text':
    case 'choice':
      return typeof value === 'string' ? value : '';
    case 'rows':
      return Array.isArray(value) ? value.map((row) => formFrom(shape.fields, isRecord(row) ? row : {}, language)) : [];
  }
}
