import { describe, expect, it } from 'vitest';
import { chanceFrom } from './chance.ts';

const SEEDS = Array.from({ length: 2000 }, (_, seed) => seed);
const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
const deviation = (values: readonly number[]) => Math.sqrt(mean(values.map((value) => (value - mean(values)) ** 2)));

describe('chanceFrom', () => {
  it('gives the same row of numbers for the same seed', () => {
    const [one, other] = [chanceFrom(42), chanceFrom(42)];
    for (let i = 0; i < 10; i++) {
      expect(one.between(0, 1)).toBe(other.between(0, 1));
      expect(one.normal(5, 2)).toBe(other.normal(5, 2));
    }
  });

  it('spreads the first draw evenly over neighbouring seeds', () => {
    const draws = SEEDS.map((seed) => chanceFrom(seed).between(0, 1));
    // Even spread: mean 1/2, standard deviation 1/√12; over 2000 draws the mean scatters by 0.0065.
    expect(mean(draws)).toBeCloseTo(0.5, 1);
    expect(deviation(draws)).toBeCloseTo(1 / Math.sqrt(12), 1);
  });

  it('draws normally, cut at three deviations', () => {
    const draws = SEEDS.map((seed) => chanceFrom(seed).normal(10, 2));
    expect(mean(draws)).toBeCloseTo(10, 0);
    expect(deviation(draws)).toBeCloseTo(2, 0);
    expect(Math.max(...draws)).toBeLessThanOrEqual(16);
    // A normal variable lies within one deviation 68.3 times in a hundred.
    expect(draws.filter((draw) => Math.abs(draw - 10) < 2).length / draws.length).toBeCloseTo(0.683, 1);
  });
});
