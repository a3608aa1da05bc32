import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DISTRIBUTIONS, HALF_WIDTH } from './distribution.ts';
import { Z_95 } from './distributions/normal.ts';
import { type Model, monteCarlo, type Uncertain } from './monte-carlo.ts';
import { propagate } from './propagate.ts';

fc.configureGlobal({ seed: 24 });

const DRAWS = 100_000;

const weighted =
  (weights: readonly number[]): Model =>
  (columns, results, from, count) => {
    for (let i = 0; i < count; i++) {
      results[from + i] = weights.reduce((sum, weight, k) => sum + weight * columns[k]![i]!, 0);
    }
  };

const normal = (value: number, standardUncertainty: number): Uncertain => ({
  value,
  standardUncertainty,
  distribution: 'normal',
});

describe('drawing', () => {
  it('comes to the law of propagation for every linear model', () => {
    const quantity = fc.record({
      value: fc.double({ min: -100, max: 100, noNaN: true }),
      standardUncertainty: fc.double({ min: 0.01, max: 10, noNaN: true }),
      distribution: fc.constantFrom(...DISTRIBUTIONS),
    });
    const term = fc.tuple(quantity, fc.double({ min: 0.1, max: 5, noNaN: true }));
    fc.assert(
      fc.property(fc.array(term, { minLength: 1, maxLength: 5 }), fc.nat(), (terms, seed) => {
        const quantities = terms.map(([one]) => one);
        const weights = terms.map(([, weight]) => weight);
        const drawn = monteCarlo({ quantities, model: weighted(weights), draws: DRAWS, seed });
        const { standardUncertainty: u } = propagate(
          quantities.map((one, k) => ({ ...one, sensitivity: weights[k] ?? 0 })),
        );
        const mean = quantities.reduce((sum, one, k) => sum + one.value * (weights[k] ?? 0), 0);
        expect(Math.abs(drawn.mean - mean)).toBeLessThan((6 * u) / Math.sqrt(DRAWS));
        expect(Math.abs(drawn.standardUncertainty / u - 1)).toBeLessThan(0.02);
      }),
      { numRuns: 25 },
    );
  });

  it('comes to the interval of the normal distribution for a sum of normal quantities', () => {
    const quantities = [normal(10, 3), normal(-4, 4)];
    const drawn = monteCarlo({ quantities, model: weighted([1, 1]), draws: 1_000_000, seed: 2 });
    for (const [low, high] of [drawn.interval95, drawn.shortest95]) {
      expect(low).toBeCloseTo(6 - 5 * Z_95, 1);
      expect(high).toBeCloseTo(6 + 5 * Z_95, 1);
    }
  });

  it('draws the same for the same seed, whatever the draws left over in the last block', () => {
    const once = (draws: number) =>
      monteCarlo({ quantities: [normal(0, 1)], model: weighted([1]), draws, seed: 9 }).mean;
    expect(once(1000)).toBe(once(1000));
    expect(once(5001)).not.toBe(once(5000));
  });

  it('lets a follower lie as many standard deviations off as its leader', () => {
    const quantities = [normal(1, 0.1), normal(5, 2)];
    const model = weighted([20, -1]);
    const drawn = monteCarlo({ quantities, together: [[0, 1]], model, draws: 2000, seed: 4 });
    expect(drawn.mean).toBeCloseTo(15, 9);
    expect(drawn.standardUncertainty).toBeLessThan(1e-9);
  });

  it('leaves exact quantities as they are', () => {
    const exact = { value: 7, standardUncertainty: 0, distribution: 'rectangular' } as const;
    expect(monteCarlo({ quantities: [exact], model: weighted([1]), draws: 1500, seed: 1 })).toMatchObject({
      mean: 7,
      standardUncertainty: 0,
      interval95: [7, 7],
    });
  });

  it('never leaves the distribution that it draws from', () => {
    const u = 0.5;
    const quantity = { value: 3, standardUncertainty: u, distribution: 'triangular' } as const;
    const { results } = monteCarlo({ quantities: [quantity], model: weighted([1]), draws: DRAWS, seed: 1 });
    const reach = HALF_WIDTH.triangular * u;
    expect(results.every((value) => value >= 3 - reach && value <= 3 + reach)).toBe(true);
  });
});

describe('propagate', () => {
  it('adds squares, and amounts where quantities rise together', () => {
    const both = [
      { standardUncertainty: 3, sensitivity: 1 },
      { standardUncertainty: 2, sensitivity: 2 },
    ];
    expect(propagate(both)).toEqual({ standardUncertainty: 5, shares: [0.36, 0.64] });
    expect(propagate(both, [[0, 1, 1]])).toEqual({ standardUncertainty: 7, shares: [3 / 7, 4 / 7] });
    expect(propagate(both, [[1, 0, -1]]).standardUncertainty).toBe(1);
  });

  it('gives shares that add up to one', () => {
    const quantity = fc.record({
      standardUncertainty: fc.double({ min: 1e-6, max: 1e3, noNaN: true }),
      sensitivity: fc.double({ min: -1e3, max: 1e3, noNaN: true }),
    });
    fc.assert(
      fc.property(fc.array(quantity, { minLength: 1, maxLength: 6 }), (quantities) => {
        fc.pre(quantities.some(({ sensitivity }) => Math.abs(sensitivity) > 1e-3));
        expect(propagate(quantities).shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 12);
      }),
    );
  });
});
