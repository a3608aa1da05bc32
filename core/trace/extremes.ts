import type { Samples } from './samples.ts';

/** What a look over the samples tells before they are gathered. */
export interface Extremes {
  readonly count: number;
  readonly peakIndex: number;
  readonly peakNm: number;
  /** The largest and the least torque of any sample, wild ones too. */
  readonly highestNm: number;
  readonly lowestNm: number;
  /** About the turning in which torque is built up, degrees. */
  readonly loadedDeg: number;
  /** Turning of one point of the curve, degrees. */
  readonly stepDeg: number;
  readonly samplesPerPoint: number;
}

const MOST_POINTS = 3000;
const POINTS_LOADED = 200;

/** Peak, lowest torque and the scale of angle. A single sample that stands far above its neighbours is no peak. */
export function extremesOf({ angleDeg, torqueNm, timeS }: Samples): Extremes {
  const count = Math.min(angleDeg.length, torqueNm.length, timeS?.length ?? Number.POSITIVE_INFINITY);
  let peakIndex = 0;
  let peakNm = Number.NEGATIVE_INFINITY;
  let calmNm = Number.NEGATIVE_INFINITY;
  let calmIndex = 0;
  let lowestNm = Number.POSITIVE_INFINITY;
  let leastDeg = Number.POSITIVE_INFINITY;
  let mostDeg = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < count; i++) {
    const nm = torqueNm[i]!;
    const deg = angleDeg[i]!;
    if (nm > calmNm) {
      if (nm > peakNm) {
        peakNm = nm;
        peakIndex = i;
      }
      const before = torqueNm[i === 0 ? 0 : i - 1]!;
      const held = nm < before ? nm : before;
      if (held > calmNm) {
        calmNm = held;
        calmIndex = i;
      }
    }
    if (nm < lowestNm) lowestNm = nm;
    if (deg < leastDeg) leastDeg = deg;
    if (deg > mostDeg) mostDeg = deg;
  }
  const highestNm = count > 0 ? peakNm : 0;
  if (peakNm > WILD * calmNm && calmNm > 0) [peakNm, peakIndex] = [calmNm, calmIndex];
  const totalDeg = Math.max(0, mostDeg - leastDeg) || 0;
  let half = peakIndex;
  while (half > 0 && torqueNm[half]! > peakNm / 2) half--;
  const wayDeg = 2 * ((angleDeg[peakIndex] ?? 0) - (angleDeg[half] ?? 0));
  const loadedDeg = Math.min(totalDeg, wayDeg > 0 ? wayDeg : totalDeg);
  const stepDeg = Math.max(totalDeg / MOST_POINTS, loadedDeg / POINTS_LOADED);
  return {
    count,
    peakIndex,
    peakNm: count > 0 ? peakNm : 0,
    highestNm,
    lowestNm: count > 0 ? lowestNm : 0,
    loadedDeg,
    stepDeg,
    samplesPerPoint: totalDeg > 0 ? (count * stepDeg) / totalDeg : 0,
  };
}

const WILD = 1.3;

/** A curve has no more points, however the strokes run. */
export const mostPoints = (count: number): number => Math.min(count, MOST_POINTS + 1) + 2;

/** Room that a curve in one stroke needs. */
export const roomFor = ({ count, samplesPerPoint }: Extremes): number =>
  Math.min(mostPoints(count), Math.ceil(count / Math.max(1, samplesPerPoint)) + 3);
