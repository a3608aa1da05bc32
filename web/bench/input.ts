import { type Language, readNumber, showNumber } from '@clampwright/core/quantity';
import { type Field, fieldsShown, type Shape } from './fields.ts';
import { isRecord } from './is-record.ts';
import { toOwn, toShown, type Units } from './units.ts';

/** What stands in the fields: text, or rows of texts; a group is one row. */
export interface BenchForm {
  readonly [name: string]: string | readonly BenchForm[];
}

/** How the fields are written: the language's decimal sign, and units in place of their own. */
export interface Hand {
  readonly language: Language;
  readonly units: Units;
}

export interface BenchReading {
  /** The input for the calculation, in its own units; fields that cannot be read are left out. */
  readonly input: Readonly<Record<string, unknown>>;
  /** Paths of the fields whose text cannot be read, as the registry names them. */
  readonly unreadable: readonly string[];
}

/** Empty fields: every needed list begins with one row, a needed choice with its first option. */
export const blankForm = (fields: readonly Field[]): BenchForm =>
  Object.fromEntries(fields.map(({ name, isNeeded, shape }) => [name, blankValue(shape, isNeeded)]));

function blankValue(shape: Shape, isNeeded: boolean): string | readonly BenchForm[] {
  if (shape.kind === 'rows') return isNeeded ? [blankForm(shape.fields)] : [];
  if (shape.kind === 'group') return [blankForm(shape.fields)];
  if (shape.kind === 'uncertain') return [Object.fromEntries(shape.fields.map(({ name }) => [name, '']))];
  return shape.kind === 'choice' && isNeeded ? (shape.options[0] ?? '') : '';
}

/** Reads what was typed; an empty field is no input. */
export function readForm(fields: readonly Field[], form: BenchForm, hand: Hand, path = ''): BenchReading {
  const input: Record<string, unknown> = {};
  const unreadable: string[] = [];
  for (const { name, shape } of fields) {
    const read = readValue(shape, form[name] ?? '', { hand, name, path: `${path}${name}` });
    unreadable.push(...read.unreadable);
    if (read.value !== undefined) input[name] = read.value;
  }
  return { input, unreadable };
}

interface ValueReading {
  readonly value?: unknown;
  readonly unreadable: readonly string[];
}

interface Place {
  readonly hand: Hand;
  /** Whose name tells the unit. */
  readonly name: string;
  readonly path: string;
}

const NOTHING: ValueReading = { unreadable: [] };

function readValue(shape: Shape, typed: BenchForm[string], place: Place): ValueReading {
  if (typeof typed !== 'string') return readInner(shape, typed, place);
  if (typed.trim() === '') return NOTHING;
  switch (shape.kind) {
    case 'number':
      return numbersIn([typed], place, ([value]) => value);
    case 'numbers':
      return numbersIn(typed.split(/[;\n\t]/), place, (values) =>
        shape.mayBeLone && values.length === 1 ? values[0] : values,
      );
    case 'lines':
      return linesIn(typed, shape.as, place);
    case 'yes-no':
      return { value: typed === 'yes', unreadable: [] };
    case 'json':
      return jsonIn(typed, place.path);
    case 'text':
    case 'choice':
    case 'named':
      return { value: typed.trim(), unreadable: [] };
    case 'rows':
    case 'group':
    case 'uncertain':
      return NOTHING;
  }
}

function readInner(shape: Shape, rows: readonly BenchForm[], { hand, name, path }: Place): ValueReading {
  const [first] = rows;
  if (!first) return NOTHING;
  switch (shape.kind) {
    case 'rows': {
      const read = rows.map((row, index) => readForm(shape.fields, row, hand, `${path}[${index}].`));
      return { value: read.map((row) => row.input), unreadable: read.flatMap((row) => row.unreadable) };
    }
    case 'named': {
      const read = readForm(shape.fields, first, hand, `${path}.`);
      return { value: read.input, unreadable: read.unreadable };
    }
    case 'group': {
      const { by } = shape.variants ?? {};
      const stand = fieldsShown(shape.fields, shape.variants, by === undefined ? undefined : first[by]);
      const read = readForm(stand, first, hand, `${path}.`);
      return Object.keys(read.input).length > 0 ? { value: read.input, unreadable: read.unreadable } : NOTHING;
    }
    case 'uncertain':
      return readUncertain(shape.fields, first, { hand, name, path });
    default:
      return NOTHING;
  }
}

/** Figure and uncertainty carry the unit of the field that they stand in. Without an uncertainty it is the figure. */
function readUncertain(fields: readonly Field[], form: BenchForm, { hand, name, path }: Place): ValueReading {
  const entries = fields.map((field) => {
    const read = readValue(field.shape, form[field.name] ?? '', { hand, name, path: `${path}.${field.name}` });
    return [field.name, read] as const;
  });
  const unreadable = entries.flatMap(([, read]) => read.unreadable);
  const told = Object.fromEntries(entries.flatMap(([key, { value }]) => (value === undefined ? [] : [[key, value]])));
  if (told['value'] === undefined) return { unreadable };
  return { value: told['standardUncertainty'] === undefined ? told['value'] : told, unreadable };
}

function numbersIn(
  texts: readonly string[],
  { hand, name, path }: Place,
  pick: (values: readonly number[]) => unknown,
): ValueReading {
  const values = texts.filter((text) => text.trim() !== '').map((text) => readNumber(text, hand.language));
  const known = values.flatMap((read) => (read.ok ? [toOwn(read.value, name, hand.units)] : []));
  return known.length === values.length ? { value: pick(known), unreadable: [] } : { unreadable: [path] };
}

/** Numbers in lines; a line without any is none. */
function linesIn(typed: string, as: 'matrix' | 'rounds' | 'lists', place: Place): ValueReading {
  const lines = typed.split('\n').filter((line) => line.trim() !== '');
  const read = lines.map((line) =>
    numbersIn(line.split(/[;\t]/), place, (values) => (as === 'rounds' && values.length === 1 ? values[0] : values)),
  );
  const unreadable = read.flatMap((line) => line.unreadable).slice(0, 1);
  const values = read.map((line) => line.value);
  return { value: as === 'lists' && values.length === 1 ? values[0] : values, unreadable };
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
export function formFrom(fields: readonly Field[], input: Readonly<Record<string, unknown>>, hand: Hand): BenchForm {
  const filled = fields.flatMap(({ name, shape }) => {
    const value = input[name];
    return value === undefined ? [] : [[name, typedFrom(shape, value, name, hand)] as const];
  });
  return { ...blankForm(fields), ...Object.fromEntries(filled) };
}

/** Digits of a figure brought into another unit, and of one brought back: fewer, so that it is as it was. */
const CONVERTED_DIGITS = 9;
const RETURNED_DIGITS = 7;

/** A figure of the calculation as it is typed. */
export function typedFigure(value: number, name: string, { language, units }: Hand): string {
  const shown = toShown(value, name, units);
  return showNumber(units[name] === undefined ? shown : Number(shown.toPrecision(CONVERTED_DIGITS)), language);
}

function typedFrom(shape: Shape, value: unknown, name: string, hand: Hand): string | readonly BenchForm[] {
  const number = (figure: unknown) => (typeof figure === 'number' ? typedFigure(figure, name, hand) : '');
  switch (shape.kind) {
    case 'number':
      return number(value);
    case 'numbers':
      return Array.isArray(value) ? value.map(number).join('; ') : number(value);
    case 'lines':
      return Array.isArray(value) ? linesFrom(value, shape.as, number) : '';
    case 'yes-no':
      return value === true ? 'yes' : 'no';
    case 'json':
      return JSON.stringify(value);
    case 'text':
    case 'choice':
      return typeof value === 'string' ? value : '';
    case 'rows':
      return Array.isArray(value) ? value.map((row) => formFrom(shape.fields, isRecord(row) ? row : {}, hand)) : [];
    case 'group':
      return [formFrom(shape.fields, isRecord(value) ? value : {}, hand)];
    case 'named':
      return isRecord(value) ? [formFrom(shape.fields, value, hand)] : typeof value === 'string' ? value : '';
    case 'uncertain': {
      const told = isRecord(value) ? value : { value };
      const parts = shape.fields.map(
        (part) => [part.name, typedFrom(part.shape, told[part.name], name, hand)] as const,
      );
      return [Object.fromEntries(parts.filter((part) => typeof part[1] === 'string'))];
    }
  }
}

function linesFrom(
  value: readonly unknown[],
  as: 'matrix' | 'rounds' | 'lists',
  number: (figure: unknown) => string,
): string {
  const line = (one: unknown) => (Array.isArray(one) ? one.map(number).join('; ') : number(one));
  const isOneList = as === 'lists' && !value.some((one) => Array.isArray(one));
  return isOneList ? line(value) : value.map(line).join('\n');
}

/** The figures of one field, wherever it stands, written in another unit; what cannot be read stays as typed. */
export function inOtherUnit(
  fields: readonly Field[],
  form: BenchForm,
  name: string,
  before: Hand,
  after: Hand,
): BenchForm {
  const changed = fields.map((field) => {
    const typed = form[field.name] ?? '';
    if (field.name === name) return [name, rewritten(field.shape, typed, name, before, after)] as const;
    if (typeof typed === 'string' || !('fields' in field.shape)) return [field.name, typed] as const;
    const { fields: inner } = field.shape;
    return [field.name, typed.map((row) => inOtherUnit(inner, row, name, before, after))] as const;
  });
  return { ...form, ...Object.fromEntries(changed) };
}

function rewritten(shape: Shape, typed: BenchForm[string], name: string, before: Hand, after: Hand): BenchForm[string] {
  if (typeof typed === 'string') {
    const read = readNumber(typed, before.language);
    if (shape.kind !== 'number' || !read.ok) return typed;
    const own = toOwn(read.value, name, before.units);
    const digits = after.units[name] === undefined ? RETURNED_DIGITS : CONVERTED_DIGITS;
    return showNumber(Number(toShown(own, name, after.units).toPrecision(digits)), after.language);
  }
  if (shape.kind !== 'uncertain') return typed;
  return typed.map((row) =>
    Object.fromEntries(
      Object.entries(row).map(([part, text]) => {
        const inner = shape.fields.find((field) => field.name === part)?.shape ?? shape.figure;
        return [part, rewritten(inner, text, name, before, after)];
      }),
    ),
  );
}
