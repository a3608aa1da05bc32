import { describe, expect, it } from 'vitest';
import { frustumMmPerN, sleeveMmPerN } from './spring.ts';

const body = { lengthMm: 20, modulusMPa: 205_000, holeMm: 13.5 };

/** Sum of thin rings, the definition itself. */
function byRings(narrowMm: number, tangent: number, rings: number): number {
  const sliceMm = body.lengthMm / rings;
  let sum = 0;
  for (let ring = 0; ring < rings; ring++) {
    const widthMm = narrowMm + 2 * tangent * sliceMm * (ring + 0.5);
    sum += sliceMm / (body.modulusMPa * (Math.PI / 4) * (widthMm ** 2 - body.holeMm ** 2));
  }
  return sum;
}

describe('a frustum', () => {
  it('gives way as the sum of its rings', () => {
    expect(frustumMmPerN(16.63, 0.5, body) / byRings(16.63, 0.5, 200_000)).toBeCloseTo(1, 8);
  });

  it('becomes a sleeve as its angle vanishes', () => {
    expect(frustumMmPerN(16.63, 1e-7, body) / sleeveMmPerN(16.63, body)).toBeCloseTo(1, 5);
  });
});
