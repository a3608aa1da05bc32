import { CALCULATIONS, inputJsonSchema } from '@clampwright/core/calculations';
import { describe, expect, it } from 'vitest';
import { type Field, fieldsOf, withInner } from './fields.ts';
import { needOf } from './need.ts';

const fields = (needed: string, others: string): readonly Field[] =>
  [needed, others].flatMap((names, index) =>
    names.split('').map((name) => ({ name, isNeeded: index === 0, shape: { kind: 'text' } as const })),
  );

describe('what is said of the fields that are needed', () => {
  it('names those that are needed where they are fewer', () => {
    expect(needOf(fields('ab', 'cde'))).toEqual({ kind: 'needed', names: ['a', 'b'] });
  });

  it('names those that may be empty where they are fewer', () => {
    expect(needOf(fields('abc', 'd'))).toEqual({ kind: 'may-be-empty', names: ['d'] });
  });

  it('is nothing where every field is needed', () => {
    expect(needOf(fields('abc', ''))).toBeUndefined();
  });

  it('is that all may be empty where none is needed', () => {
    expect(needOf(fields('', 'ab'))).toEqual({ kind: 'all-may-be-empty', names: [] });
  });

  it('leaves out the field that decides which others stand', () => {
    expect(needOf(fields('ab', 'c'), 'c')).toBeUndefined();
  });
});

it.each(CALCULATIONS.map(({ name }) => name))('tells of each field of %s whether it is needed', (name) => {
  const all = fieldsOf(inputJsonSchema(name));
  const groups = [all, ...withInner(all).flatMap(({ shape }) => ('fields' in shape ? [shape.fields] : []))];
  for (const group of groups) {
    const need = needOf(group);
    const isTold = ({ name: field }: Field) =>
      need === undefined ||
      (need.kind === 'needed' && need.names.includes(field)) ||
      (need.kind === 'may-be-empty' && !need.names.includes(field));
    expect(group.map(isTold)).toEqual(group.map(({ isNeeded }) => isNeeded));
  }
});
