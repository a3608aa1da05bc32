import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Continuous } from './continuous.ts';
import { fisherF } from './fisher-f.ts';
import { chiSquare, gamma } from './gamma.ts';
import { normal, shareAbove, shareBelow, Z_95 } from './normal.ts';
import { studentT } from './student-t.ts';
import { exponential, weibull } from './weibull.ts';

fc.configureGlobal({ seed: 24 });

const degrees = fc.double({ min: 0.5, max: 2000, noNaN: true });
const scale = fc.double({ min: 0.01, max: 100, noNaN: true });
const share = fc.oneof(
  fc.double({ min: 1e-6, max: 1 - 1e-6, noNaN: true }),
  fc.double({ min: -200, max: -1, noNaN: true }).map((power) => 10 ** power),
);

const FAMILIES: readonly (readonly [string, fc.Arbitrary<Continuous>])[] = [
  ['normal', fc.constant(normal)],
  ['t', degrees.map(studentT)],
  ['F', fc.tuple(degrees, degrees).map(([above, under]) => fisherF(above, under))],
  ['chi-square', degrees.map(chiSquare)],
  ['gamma', fc.tuple(degrees, scale).map(([shape, size]) => gamma(shape, size))],
  ['weibull', fc.tuple(scale, scale).map(([shape, size]) => weibull(shape, size))],
];

describe.each(FAMILIES)('%s distribution', (_, family) => {
  it('has quantiles that its shares lead back from, in either tail', () => {
    fc.assert(
      fc.property(family, share, (distribution, tail) => {
        const [low, high] = [distribution.quantile(tail), distribution.quantileAbove(tail)];
        fc.pre([low, high].every((x) => Math.abs(x) > 1e-290 && Math.abs(x) < 1e290));
        expect(distribution.below(low) / tail).toBeCloseTo(1, 9);
        expect(distribution.above(high) / tail).toBeCloseTo(1, 9);
      }),
      { numRuns: 300 },
    );
  });

  it('grows from 0 to 1, and both sides of a value add up to 1', () => {
    fc.assert(
      fc.property(family, share, share, (distribution, a, b) => {
        const [x, y] = [distribution.quantile(Math.min(a, b)), distribution.quantile(Math.max(a, b))];
        expect(x).toBeLessThanOrEqual(y + 1e-12 * Math.abs(y));
        expect(distribution.below(x)).toBeLessThanOrEqual(distribution.below(y) + 1e-12);
        expect(distribution.below(x) + distribution.above(x)).toBeCloseTo(1, 12);
      }),
    );
  });

  it('has the density that its share grows by', () => {
    const middle = fc.double({ min: 0.05, max: 0.95, noNaN: true });
    fc.assert(
      fc.property(family, middle, (distribution, at) => {
        const x = distribution.quantile(at);
        fc.pre(Math.abs(x) > 1e-3);
        const step = 1e-5 * Math.abs(x);
        const slope = (distribution.below(x + step) - distribution.below(x - step)) / (2 * step);
        expect(slope / distribution.density(x)).toBeCloseTo(1, 3);
      }),
    );
  });

  it('ends where there is nothing below and nothing above', () => {
    fc.assert(
      fc.property(family, (distribution) => {
        expect(distribution.below(distribution.quantile(0))).toBe(0);
        expect(distribution.above(distribution.quantileAbove(0))).toBe(0);
      }),
    );
  });
});

describe('kinship of the distributions', () => {
  it('t and normal are symmetric, to the last digit', () => {
    fc.assert(
      fc.property(degrees, share, (nu, tail) => {
        for (const distribution of [normal, studentT(nu)]) {
          expect(distribution.quantile(tail)).toBe(-distribution.quantileAbove(tail));
        }
      }),
    );
  });

  it('t squared is F, chi-square over its degrees is F with endless ones, two degrees are exponential', () => {
    fc.assert(
      fc.property(degrees, fc.double({ min: 0.001, max: 0.4, noNaN: true }), (nu, tail) => {
        expect(studentT(nu).quantileAbove(tail / 2) ** 2 / fisherF(1, nu).quantileAbove(tail)).toBeCloseTo(1, 9);
        expect(chiSquare(nu).quantileAbove(tail) / nu / fisherF(nu, 1e7).quantileAbove(tail)).toBeCloseTo(1, 4);
        expect(chiSquare(2).quantileAbove(tail) / exponential(2).quantileAbove(tail)).toBeCloseTo(1, 11);
      }),
    );
  });

  it('leaves 2.5 % above the end of the interval of 95 %', () => {
    expect(shareAbove(Z_95)).toBeCloseTo(0.025, 15);
    expect(shareBelow(0)).toBe(0.5);
  });
});
