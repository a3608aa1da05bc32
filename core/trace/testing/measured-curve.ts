import { fillNormal } from '../../statistics/normal-draw.ts';
import { randomWords } from '../../statistics/random-words.ts';
import type { MadeCurve } from './made-curve.ts';

/** How a wrench measures a curve. */
export interface Measuring {
  /** Standard deviation of a sample, as a share of the peak. */
  readonly noise: number;
  /** Steps of the torque, as a share of the peak; 0: none. */
  readonly resolution: number;
  readonly angleStepDeg: number;
}

/** A made curve as a wrench would tell it. Seeded. */
export function measured(
  { angleDeg, torqueNm }: MadeCurve,
  { noise, resolution, angleStepDeg }: Measuring,
  seed: number,
) {
  const peakNm = torqueNm.reduce((most, nm) => Math.max(most, nm), 0);
  const column = new Float64Array(torqueNm.length);
  fillNormal(randomWords(seed), column, column.length, { value: 0, standardUncertainty: noise * peakNm });
  const inSteps = (value: number, step: number): number => (step > 0 ? Math.round(value / step) * step : value);
  return {
    angleDeg: Float64Array.from(angleDeg, (deg) => inSteps(deg, angleStepDeg)),
    torqueNm: Float64Array.from(torqueNm, (nm, i) => inSteps(nm + column[i]!, resolution * peakNm)),
  };
}
