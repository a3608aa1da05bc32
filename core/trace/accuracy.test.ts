import { describe, expect, it } from 'vitest';
import { readCurve } from './figures.ts';
import { exactTorqueNm, HALF_SLOPE_DEG, madeCurve, SLOPE, SNUG_DEG } from './testing/made-curve.ts';
import { type Measuring, measured } from './testing/measured-curve.ts';

const SEEDS = Array.from({ length: 40 }, (_, seed) => seed);
const YIELD_NM = exactTorqueNm(HALF_SLOPE_DEG);

/** `scripts/traces.js` prints the same over a wider grid; docs/traces.md holds the table. */
describe.each<Measuring & { readonly stepDeg: number }>([
  { noise: 0.005, resolution: 0, angleStepDeg: 0, stepDeg: 0.1 },
  { noise: 0.005, resolution: 0.001, angleStepDeg: 0.1, stepDeg: 0.2 },
  { noise: 0.005, resolution: 0.01, angleStepDeg: 0.5, stepDeg: 0.1 },
  { noise: 0.005, resolution: 0.01, angleStepDeg: 1, stepDeg: 0.5 },
  { noise: 0, resolution: 0.01, angleStepDeg: 1, stepDeg: 0.1 },
])('a curve with noise $noise, steps of $resolution and of $angleStepDeg°, sampled each $stepDeg°', (measuring) => {
  const figures = SEEDS.map(
    (seed) => readCurve(measured(madeCurve(measuring.stepDeg), measuring, seed), { yieldFraction: 0.5 }).figures,
  );

  it('gives the slope within 2 %', () => {
    for (const { slopeNmPerDeg = 0 } of figures) expect(Math.abs(slopeNmPerDeg / SLOPE - 1)).toBeLessThan(0.02);
  });

  it('gives the torque at yield within 3 %', () => {
    for (const { yield: point } of figures) expect(Math.abs((point?.torqueNm ?? 0) / YIELD_NM - 1)).toBeLessThan(0.03);
  });

  it('gives snug within 5° of 30° of coming together', () => {
    for (const { snug } of figures) expect(Math.abs((snug?.angleDeg ?? 0) - SNUG_DEG)).toBeLessThan(5);
  });
});
