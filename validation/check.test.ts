import { describe, expect, it } from 'vitest';
import { check, halfUnit, outcomeOf, type Published } from './check.ts';

const holds = (ours: number | string, theirs: Published) => outcomeOf(check('', () => ours, theirs)).holds;

describe('a check', () => {
  it.each<[number, string, boolean]>([
    [2.6754, '2.675', true],
    [2.6756, '2.675', false],
    [2.67, '2.675', false],
    [0.00706, '7.06e-3', true],
    [0.00707, '7.06e-3', false],
    [21_200.4, '21200', true],
    [21_201, '21200', false],
  ])('of %d against printed %s holds: %s', (ours, value, expected) => {
    expect(holds(ours, { value, unit: 'mm' })).toBe(expected);
  });

  it('counts significant figures where zeros hide the last place', () => {
    expect([21_240, 21_260].map((ours) => holds(ours, { value: '21200', unit: 'N', significant: 3 }))).toEqual([
      true,
      false,
    ]);
  });

  it('takes a tolerance of the source', () => {
    const theirs = { value: '100', unit: '', relative: 0.01, because: 'the source says so' };
    expect([100.9, 101.1].map((ours) => holds(ours, theirs))).toEqual([true, false]);
  });

  it('misses when ours fits the misprint instead of the correction', () => {
    const theirs = { value: '1.155', misprint: '1.16', unit: '', because: 'rounded twice' };
    expect([1.1549, 1.16].map((ours) => holds(ours, theirs))).toEqual([true, false]);
  });

  it('misses what is no misprint, since ours fits both', () => {
    expect(holds(1.155, { value: '1.155', misprint: '1.155', unit: '', because: 'none' })).toBe(false);
  });

  it('compares orders as text', () => {
    expect([
      holds('1 3 2 4', { value: '1 3 2 4', unit: '' }),
      holds('1 2 3 4', { value: '1 3 2 4', unit: '' }),
    ]).toEqual([true, false]);
  });

  it('misses when ours is refused or no number', () => {
    const refused = outcomeOf(
      check(
        '',
        () => {
          throw new Error('no such thread');
        },
        { value: '5', unit: '' },
      ),
    );
    expect(refused).toMatchObject({ holds: false, ours: 'no such thread' });
    expect(holds(Number.NaN, { value: '5', unit: '' })).toBe(false);
  });
});

describe('halfUnit', () => {
  it.each([
    ['36.6', undefined, 0.05],
    ['36', undefined, 0.5],
    ['1120', 3, 5],
    ['0.0140', 3, 0.00005],
    ['1.129848e-1', undefined, 0.00000005],
  ])('of %s with %s figures is %d', (printed, significant, half) => {
    expect(halfUnit(printed, significant)).toBeCloseTo(half, 15);
  });
});
