import { describe, expect, it } from 'vitest';
import { DISTRIBUTIONS, FILL, HALF_WIDTH } from './distribution.ts';
import { shareBelow } from './distributions/normal.ts';
import { randomWords } from './random-words.ts';

const COUNT = 200_000;
const STANDARD = { value: 0, standardUncertainty: 1 };

const drawn = (distribution: (typeof DISTRIBUTIONS)[number], seed = 3): Float64Array => {
  const column = new Float64Array(COUNT);
  FILL[distribution](randomWords(seed), column, COUNT, STANDARD);
  return column;
};

const mean = (values: Float64Array, power: number) =>
  values.reduce((sum, value) => sum + value ** power, 0) / values.length;

/** Share below z of each distribution of mean 0 and standard deviation 1. */
const SHARE = {
  normal: shareBelow,
  rectangular: (z: number) => 0.5 + z / (2 * HALF_WIDTH.rectangular),
  triangular: (z: number) => {
    const t = z / HALF_WIDTH.triangular;
    return t < 0 ? 0.5 * (1 + t) ** 2 : 1 - 0.5 * (1 - t) ** 2;
  },
} as const;

describe.each(DISTRIBUTIONS)('draws from the %s distribution', (distribution) => {
  const values = drawn(distribution);

  it('have mean 0 and standard deviation 1', () => {
    expect(Math.abs(mean(values, 1))).toBeLessThan(5 / Math.sqrt(COUNT));
    expect(Math.abs(mean(values, 2) - 1)).toBeLessThan(10 / Math.sqrt(COUNT));
  });

  it('follow its distribution function (Kolmogorov-Smirnov at 0.1 %)', () => {
    const sorted = values.toSorted();
    const farthest = sorted.reduce(
      (worst, value, index) => Math.max(worst, Math.abs(SHARE[distribution](value) - (index + 0.5) / COUNT)),
      0,
    );
    expect(farthest * Math.sqrt(COUNT)).toBeLessThan(1.95);
  });

  it('do not know of the draw before', () => {
    const together = values.reduce((sum, value, index) => sum + value * (values[index - 1] ?? 0), 0) / COUNT;
    expect(Math.abs(together)).toBeLessThan(5 / Math.sqrt(COUNT));
  });

  it('end where the distribution ends', () => {
    expect(values.every((value) => Math.abs(value) <= HALF_WIDTH[distribution] * (1 + 1e-15))).toBe(true);
  });
});

describe('the tail of the normal draws', () => {
  it('is as heavy as it must be beyond the ziggurat', () => {
    const count = 4_000_000;
    const column = new Float64Array(count);
    FILL.normal(randomWords(11), column, count, STANDARD);
    const beyond = column.reduce((sum, value) => sum + (Math.abs(value) > 3.6541528853610088 ? 1 : 0), 0);
    const expected = 2 * count * shareBelow(-3.6541528853610088);
    expect(Math.abs(beyond - expected)).toBeLessThan(5 * Math.sqrt(expected));
  });
});
