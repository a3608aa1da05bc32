import { failed, invalid, ok, type Result } from '../failure/failure.ts';
import { heightAt, heightUncertainty, type LineFit, leastSquares, robustLine } from './line-fit.ts';
import type { Samples } from './samples.ts';

/** When a tight fastener moves again. */
export interface FirstMovement {
  /** Where the lines before and after the movement meet, N·m. */
  readonly torqueNm: number;
  readonly standardUncertaintyNm: number;
  readonly angleDeg: number;
  /** First sample after it moved. */
  readonly index: number;
  /** Largest torque before it moved: static friction lets it lie too high, N·m. */
  readonly staticPeakNm: number;
  readonly torqueAfterNm: number;
  readonly torqueAfterDeg: number;
  /** Missing where the wrench takes its own wind-up out, so that the angle stands. */
  readonly windUpNmPerDeg?: number;
  readonly movingNmPerDeg: number;
}

const FEWEST = 5;
const DEVIATIONS = 4;
const IN_A_ROW = 3;
/** Smallest deviation that counts, as a share of the peak: two lines that are exact have none. */
const LEAST_SHARE = 0.002;
const FOOT = 0.1;
/** Torque that rises by so much of the peak while the angle stands was wound up. */
const STOOD_SHARE = 0.3;
/** How far torque may fall after it moved, and over how much turning the moving line is fitted, degrees. */
const DROP_DEG = 3;
const MOVING_DEG = 10;

/**
 * Torque at which a tight fastener moves again, from the curve of a re-start: a line through the wind-up of the
 * wrench, a line through what comes after the movement, and where they meet.
 *
 * Movement begins where the torque leaves the first line downwards by four deviations three samples in a row.
 *
 * @param afterDeg turning after the movement at which torque is told as well, degrees
 * @returns refused where nothing winds up, or nothing moves
 * @source two-line reading of residual torque: common practice; the least dependent on the hand
 */
export function firstMovement(samples: Samples, afterDeg: number): Result<FirstMovement> {
  const { angleDeg, torqueNm, count } = forward(samples);
  const peakNm = torqueNm.subarray(0, count).reduce((most, nm) => Math.max(most, nm), 0);
  const wound = windUp(angleDeg, torqueNm, count, peakNm) ?? standing(angleDeg, torqueNm, count, peakNm);
  if (!wound) return still(peakNm);
  const { line, moved } = wound;
  const settledAt = settledPoint(angleDeg, torqueNm, count, moved);
  let to = settledAt;
  while (to < count && angleDeg[to]! <= angleDeg[settledAt]! + MOVING_DEG) to++;
  if (to - settledAt < FEWEST) return tooShort();
  const moving = robustLine(angleDeg, torqueNm, settledAt, to);
  const met = meeting(line, moving, angleDeg[moved - 1]!);
  if (!met) return still(peakNm);
  const { meetDeg } = met;
  return ok({
    torqueNm: heightAt(moving, meetDeg),
    standardUncertaintyNm: met.standardUncertaintyNm,
    angleDeg: meetDeg,
    index: forwardIndex(samples, angleDeg[moved]!),
    staticPeakNm: torqueNm.subarray(0, settledAt + 1).reduce((most, nm) => Math.max(most, nm), 0),
    torqueAfterNm: heightAt(moving, meetDeg + afterDeg),
    torqueAfterDeg: afterDeg,
    ...(line ? { windUpNmPerDeg: line.slope } : {}),
    movingNmPerDeg: moving.slope,
  });
}

interface Wound {
  readonly line: LineFit | undefined;
  /** First point after the movement. */
  readonly moved: number;
}

/** Where the two lines meet; with the angle standing, the height of the second one there. */
function meeting(line: LineFit | undefined, moving: LineFit, stoodDeg: number) {
  if (!line) return { meetDeg: stoodDeg, standardUncertaintyNm: heightUncertainty(moving, stoodDeg) };
  const steeper = line.slope - moving.slope;
  if (!(steeper > 0)) return undefined;
  const meetDeg = (heightAt(moving, 0) - heightAt(line, 0)) / steeper;
  const standardUncertaintyNm = Math.hypot(
    (moving.slope / steeper) * heightUncertainty(line, meetDeg),
    (line.slope / steeper) * heightUncertainty(moving, meetDeg),
  );
  return { meetDeg, standardUncertaintyNm };
}

/** Torque that rises while the angle stands: the wrench takes its own wind-up out. */
function standing(angleDeg: Float64Array, torqueNm: Float64Array, count: number, peakNm: number): Wound | undefined {
  let from = 0;
  for (let i = 1; i <= count; i++) {
    if (i < count && angleDeg[i]! <= angleDeg[from]!) continue;
    if (i - from >= 2 && torqueNm[i - 1]! - torqueNm[from]! > STOOD_SHARE * peakNm && i < count)
      return { line: undefined, moved: i };
    from = i;
  }
  return undefined;
}

const still = (peakNm: number): ReturnType<typeof failed> =>
  invalid(
    'torqueNm',
    `Nothing shows that the fastener moved before ${peakNm} N·m.`,
    'a re-start that goes on for a few degrees after the fastener moves',
  );

const tooShort = (): ReturnType<typeof failed> =>
  invalid(
    'angleDeg',
    'The pull ends before a line can be laid through the movement.',
    'a few degrees and five samples more',
  );

interface Forward {
  readonly angleDeg: Float64Array;
  readonly torqueNm: Float64Array;
  readonly count: number;
}

/** Samples that wind up or turn on: the angle never runs back, and letting go at the end is left out. */
function forward({ angleDeg, torqueNm }: Samples): Forward {
  const angle = new Float64Array(angleDeg.length);
  const torque = new Float64Array(angleDeg.length);
  let count = 0;
  let top = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < angleDeg.length; i++) {
    if (angleDeg[i]! < top) continue;
    if (angleDeg[i]! <= top && torqueNm[i]! <= torque[count - 1]!) continue;
    top = angleDeg[i]!;
    angle[count] = top;
    torque[count] = torqueNm[i]!;
    count++;
  }
  return { angleDeg: angle, torqueNm: torque, count };
}

/** Lays a line through what rises, begins anew where it grows steeper, and ends where torque stays below it. */
function windUp(angleDeg: Float64Array, torqueNm: Float64Array, count: number, peakNm: number): Wound | undefined {
  let from = 0;
  while (from < count && torqueNm[from]! < FOOT * peakNm) from++;
  let above = 0;
  let below = 0;
  let line: LineFit | undefined;
  let fitAgainAt = 0;
  for (let i = from + FEWEST; i < count; i++) {
    // a line that grows by a twentieth at a time keeps the whole linear
    if (!line || (above + below === 0 && i >= fitAgainAt)) {
      line = leastSquares(angleDeg, torqueNm, from, i);
      fitAgainAt = i + 1 + (i - from) / 20;
    }
    const off = torqueNm[i]! - heightAt(line, angleDeg[i]!);
    const bound = DEVIATIONS * Math.max(line.deviation, LEAST_SHARE * peakNm);
    above = off > bound ? above + 1 : 0;
    below = off < -bound ? below + 1 : 0;
    if (below === IN_A_ROW) return line.slope > 0 ? { line, moved: i - IN_A_ROW + 1 } : undefined;
    if (above < IN_A_ROW) continue;
    from = i - IN_A_ROW + 1;
    i = from + FEWEST - 1;
    line = undefined;
    above = 0;
  }
  return undefined;
}

/** Where torque has fallen to after the movement. */
function settledPoint(angleDeg: Float64Array, torqueNm: Float64Array, count: number, moved: number): number {
  let lowest = moved;
  for (let i = moved; i < count && angleDeg[i]! <= angleDeg[moved]! + DROP_DEG; i++)
    if (torqueNm[i]! < torqueNm[lowest]!) lowest = i;
  return lowest;
}

function forwardIndex({ angleDeg }: Samples, deg: number): number {
  let i = 0;
  while (i < angleDeg.length - 1 && angleDeg[i]! < deg) i++;
  return i;
}
