import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { shareBelow, Z_95 } from './normal-probability.ts';

fc.configureGlobal({ seed: 24 });

describe('shareBelow', () => {
  // M. Abramowitz and I. Stegun, Handbook of Mathematical Functions, table 26.1 (from memory).
  it.each([
    [0, 0.5],
    [0.5, 0.691462461274013],
    [1, 0.841344746068543],
    [2, 0.977249868051821],
    [3, 0.99865010196837],
    [-4, 3.167124183311992e-5],
    [-6, 9.86587645037698e-10],
  ])('of %d is %d', (z, share) => {
    expect(shareBelow(z) / share).toBeCloseTo(1, 11);
  });

  it('leaves 2.5 % above the end of the interval of 95 %', () => {
    expect(1 - shareBelow(Z_95)).toBeCloseTo(0.025, 14);
  });

  it('adds up to one with the other side and grows', () => {
    const z = fc.double({ min: -12, max: 12, noNaN: true });
    fc.assert(
      fc.property(z, z, (a, b) => {
        expect(shareBelow(a) + shareBelow(-a)).toBeCloseTo(1, 14);
        expect(shareBelow(Math.min(a, b))).toBeLessThanOrEqual(shareBelow(Math.max(a, b)) + 1e-15);
      }),
    );
  });
});
