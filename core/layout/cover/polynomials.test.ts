import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { gaussRule, jacobi } from './polynomials.ts';

fc.configureGlobal({ seed: 61 });

const inside = fc.double({ min: -0.99, max: 0.99, noNaN: true });

describe('polynomials of Jacobi', () => {
  it('are those of Legendre where both parameters are 0', () => {
    fc.assert(
      fc.property(inside, (x) => {
        const [p0, p1, p2, p3] = jacobi(0, 0, 4, x).map(({ value }) => value);
        expect(p0).toBe(1);
        expect(p1).toBeCloseTo(x, 14);
        expect(p2).toBeCloseTo((3 * x * x - 1) / 2, 14);
        expect(p3).toBeCloseTo((5 * x ** 3 - 3 * x) / 2, 14);
      }),
    );
  });

  it('solve the equation of Jacobi, so that value, slope and bend belong together', () => {
    fc.assert(
      fc.property(inside, fc.nat(40), fc.nat(12), (x, beta, degree) => {
        // (1 − x²)·y″ + (β − (β + 2)·x)·y′ + n·(n + β + 1)·y = 0 with α = 0
        const { value, first, second } = jacobi(0, beta, degree + 1, x)[degree]!;
        const terms = [
          (1 - x * x) * second,
          (beta - (beta + 2) * x) * first,
          degree * (degree + beta + 1) * value,
        ] as const;
        const size = Math.max(1e-9, ...terms.map(Math.abs));
        expect((terms[0] + terms[1] + terms[2]) / size).toBeCloseTo(0, 9);
      }),
    );
  });
});

describe('a rule of Gauss and Legendre', () => {
  it('integrates powers up to twice its points', () => {
    for (const count of [1, 2, 5, 16, 60]) {
      const rule = gaussRule(count);
      for (let power = 0; power < 2 * count; power++) {
        const sum = rule.reduce((all, { x, weight }) => all + weight * x ** power, 0);
        expect(sum).toBeCloseTo(power % 2 === 0 ? 2 / (power + 1) : 0, 12);
      }
    }
  });
});
