import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { conformityOf } from './conformity.ts';

fc.configureGlobal({ seed: 24 });

const figure = fc.double({ min: -1e6, max: 1e6, noNaN: true });
const uncertainty = fc.double({ min: 0, max: 1e5, noNaN: true });
const limits = fc.record({ lower: figure, upper: figure }).map(({ lower, upper }) => ({
  lower: Math.min(lower, upper),
  upper: Math.max(lower, upper),
}));

describe('conformity', () => {
  it('is between 0 and 1, and the three shares are 1 together', () => {
    fc.assert(
      fc.property(figure, uncertainty, limits, (value, u, window) => {
        const { inside, below, above } = conformityOf(value, u, window);
        for (const share of [inside, below, above]) {
          expect(share).toBeGreaterThanOrEqual(0);
          expect(share).toBeLessThanOrEqual(1);
        }
        expect(inside + below + above).toBeCloseTo(1, 12);
      }),
    );
  });

  it('falls as a value goes away from a limit on one side', () => {
    fc.assert(
      fc.property(figure, figure, uncertainty, figure, (a, b, u, upper) => {
        const at = (value: number) => conformityOf(value, u, { upper }).inside;
        expect(at(Math.max(a, b))).toBeLessThanOrEqual(at(Math.min(a, b)) + 1e-15);
      }),
    );
  });

  it('grows with a wider window', () => {
    fc.assert(
      fc.property(
        figure,
        uncertainty,
        limits,
        fc.double({ min: 0, max: 1e5, noNaN: true }),
        (value, u, window, more) => {
          const wider = { lower: window.lower - more, upper: window.upper + more };
          expect(conformityOf(value, u, wider).inside).toBeGreaterThanOrEqual(
            conformityOf(value, u, window).inside - 1e-15,
          );
        },
      ),
    );
  });

  it('is certain without uncertainty; on a limit is inside', () => {
    expect(conformityOf(5, 0, { lower: 5, upper: 6 })).toEqual({ inside: 1, below: 0, above: 0 });
    expect(conformityOf(4.9, 0, { lower: 5 })).toEqual({ inside: 0, below: 1, above: 0 });
    expect(conformityOf(5, 0, { upper: 4 })).toEqual({ inside: 0, below: 0, above: 1 });
  });

  it('keeps the digits of a chance that is very small', () => {
    expect(conformityOf(0, 1, { upper: 8 }).above / 6.22096057427178e-16).toBeCloseTo(1, 10);
  });
});
