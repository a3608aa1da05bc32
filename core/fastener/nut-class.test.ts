import { describe, expect, it } from 'vitest';
import { nutClassFor, readNutClass } from './nut-class.ts';
import { readThread } from './read-thread.ts';

const nut = (text: string, designation: string) => {
  const thread = readThread(designation);
  return thread.ok ? readNutClass(text, thread.value) : thread;
};

describe('readNutClass', () => {
  it('gives the stress under proof load at the size', () => {
    expect(nut('8', 'M10')).toEqual({ ok: true, value: { name: '8', proofStressMPa: 870 } });
    expect(nut('class 8', 'M20')).toMatchObject({ value: { proofStressMPa: 920 } });
  });

  it.each([
    ['7', 'M10', 'one of 04, 05, 5'],
    ['8', 'M42', 'left out'],
    ['8', '1/2-13 UNC', 'left out'],
  ])('refuses %s on %s and tells what there is', (text, designation, expected) => {
    expect(nut(text, designation)).toMatchObject({
      failure: { field: 'nutClass', expected: expect.stringContaining(expected) },
    });
  });
});

describe('nutClassFor', () => {
  it.each([
    ['8.8', '8'],
    ['10.9', '10'],
    ['A2-70', undefined],
  ])('%s wants %s', (bolt, expected) => {
    expect(nutClassFor(bolt)).toBe(expected);
  });
});
