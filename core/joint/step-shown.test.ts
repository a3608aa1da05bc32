import { describe, expect, it } from 'vitest';
import { shown } from './step-shown.ts';

const step = (formula: string, numbers: Readonly<Record<string, number>>) =>
  shown({ symbol: 'x', formula, numbers, value: 1, unit: 'mm', source: 'here' }).withNumbers;

describe('a step shown', () => {
  it.each([
    ['l_K/(E_S·A_N)', { l_K: 40, E_S: 205_000, A_N: 113.0973 }, '40/(205 000·113.1)'],
    ['d_w + 2·d', { d: 12, d_w: 16.63 }, '16.63 + 2·12'],
    ["D'_A/d_w", { "D'_A": 40, d_w: 16.63 }, '40/16.63'],
    ['δ_P/(δ_S + δ_P)', { δ_S: 2.9918e-6, δ_P: 6.839e-7 }, '6.839·10⁻⁷/(2.992·10⁻⁶ + 6.839·10⁻⁷)'],
    ['π/4·d_0²', { d_0: 10.36 }, 'π/4·10.36²'],
    ['F_M − ΔF', { F_M: 42_000, ΔF: -1500 }, '42 000 − (−1500)'],
  ])('puts the numbers into %s', (formula, numbers, expected) => {
    expect(step(formula, numbers)).toBe(expected);
  });

  it('leaves names of functions and letters without a number', () => {
    expect(step('ln(y) + π·x', { y: 2 })).toBe('ln(2) + π·x');
  });

  it('keeps the value unrounded', () => {
    expect(shown({ symbol: 'x', formula: 'a', numbers: { a: 1 / 3 }, value: 1 / 3, unit: '', source: 's' }).value).toBe(
      1 / 3,
    );
  });
});
