import { expect, it } from 'vitest';
import { windUpDeg } from './wind-up.ts';

/** k = (pi/180) G pi d^4 / (32 L), G = 79 300 MPa. */
const stiffnessNmPerDeg = (diameterMm: number, lengthMm: number) =>
  ((Math.PI / 180) * 79.3 * Math.PI * diameterMm ** 4) / (32 * lengthMm);

it('is the twist of a round bar', () => {
  // bars 12.7 x 250 and 19.05 x 400 mm, computed from the formula
  expect(windUpDeg(100, 0, stiffnessNmPerDeg(12.7, 250))).toBeCloseTo(7.07, 2);
  expect(windUpDeg(400, 0, stiffnessNmPerDeg(19.05, 400))).toBeCloseTo(8.94, 2);
});

it('counts from the torque at which the angle began', () => {
  expect(windUpDeg(100, 40, 12)).toBe(5);
});

it('is nothing below the torque at which the angle begins', () => {
  expect(windUpDeg(30, 40, 12)).toBe(0);
});
