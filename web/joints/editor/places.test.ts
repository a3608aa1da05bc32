import { expect, it } from 'vitest';
import { inOrderOfParts, partOf } from './places.ts';

it.each([
  ['name', 'name'],
  ['torqueUnit', 'name'],
  ['fastener.thread', 'fastener'],
  ['stages[1].rounds[0].share', 'stages'],
  ['layout.points[3].xMm', 'layout'],
  ['', undefined],
])('the field “%s” belongs to %s', (field, part) => {
  expect(partOf(field)).toBe(part);
});

it('lists what is to be mended in the order of the page, stages in their own', () => {
  const fields = ['numbersSource.text', 'stages[0].torque', 'stages[1].torque', '', 'name'].map((field) => ({ field }));
  expect(inOrderOfParts(fields).map(({ field }) => field)).toEqual([
    'name',
    'stages[0].torque',
    'stages[1].torque',
    'numbersSource.text',
    '',
  ]);
});
