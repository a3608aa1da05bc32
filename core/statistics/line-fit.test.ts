import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lineError, lineFit, nextError } from './line-fit.ts';

fc.configureGlobal({ seed: 24 });

describe('a line through points', () => {
  it('meets points that lie on one', () => {
    const figure = fc.double({ min: -1000, max: 1000, noNaN: true });
    const xs = fc.uniqueArray(fc.integer({ min: -100, max: 100 }), { minLength: 2, maxLength: 20 });
    fc.assert(
      fc.property(figure, figure, xs, (a, b, places) => {
        const fit = lineFit(places.map((x) => ({ x, y: a + b * x })));
        expect(fit.slope).toBeCloseTo(b, 8);
        expect(fit.intercept).toBeCloseTo(a, 6);
      }),
    );
  });

  // Drift 0.3, 0.8, 1.0, 1.6, 2.1: reckoned aside: a 0.28, b 0.44, s 0.1095
  it('knows how well it is known', () => {
    const fit = lineFit([0.3, 0.8, 1, 1.6, 2.1].map((y, x) => ({ x, y })));
    expect(fit).toMatchObject({ slope: expect.closeTo(0.44, 12), intercept: expect.closeTo(0.28, 12) });
    expect(fit.residualDeviation).toBeCloseTo(Math.sqrt(0.012), 12);
    expect(fit.slopeError).toBeCloseTo(Math.sqrt(0.0012), 12);
    expect(lineError(fit, 2)).toBeCloseTo(Math.sqrt(0.012 / 5), 12);
    expect(nextError(fit, 2)).toBeCloseTo(Math.sqrt(0.012 * 1.2), 12);
  });

  it('does not pretend to know it of two points', () => {
    const fit = lineFit([
      { x: 0, y: 1 },
      { x: 1, y: 2 },
    ]);
    expect([fit.slopeError, lineError(fit, 5), nextError(fit, 5)]).toEqual([undefined, undefined, undefined]);
  });
});
