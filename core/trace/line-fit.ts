import { bringToPlace } from '../statistics/order-statistics.ts';

/** A straight line through points, told about the middle of them. */
export interface LineFit {
  readonly slope: number;
  readonly meanX: number;
  /** Height of the line at `meanX`. */
  readonly meanY: number;
  readonly slopeStandardError: number;
  /** Standard deviation of the points about the line. */
  readonly deviation: number;
  readonly count: number;
}

export const heightAt = ({ slope, meanX, meanY }: LineFit, x: number): number => meanY + slope * (x - meanX);

/** Where the line has a height. */
export const reaches = ({ slope, meanX, meanY }: LineFit, y: number): number => meanX + (y - meanY) / slope;

/** Standard uncertainty of the line's height. */
export const heightUncertainty = ({ deviation, count, slopeStandardError, meanX }: LineFit, x: number): number =>
  Math.hypot(deviation / Math.sqrt(count), slopeStandardError * (x - meanX));

/** Points farther out than so many deviations count less: 95 % efficient where all is normal (Huber 1964). */
const HUBER = 1.345;
const MAD_TO_DEVIATION = 1.4826;
const MOST_ROUNDS = 60;

/**
 * Straight line by least squares over points `from` up to, not including, `to`; at least three.
 *
 * @source slope, standard error s/√Σ(x - x̄)²: any textbook of regression; equal to scipy.stats.linregress
 */
export function leastSquares(x: Float64Array, y: Float64Array, from: number, to: number): LineFit {
  const count = to - from;
  let sumX = 0;
  let sumY = 0;
  for (let i = from; i < to; i++) {
    sumX += x[i]!;
    sumY += y[i]!;
  }
  const meanX = sumX / count;
  const meanY = sumY / count;
  let squares = 0;
  let products = 0;
  for (let i = from; i < to; i++) {
    const off = x[i]! - meanX;
    squares += off * off;
    products += off * (y[i]! - meanY);
  }
  const slope = squares > 0 ? products / squares : 0;
  let residuals = 0;
  for (let i = from; i < to; i++) residuals += (y[i]! - meanY - slope * (x[i]! - meanX)) ** 2;
  const deviation = Math.sqrt(residuals / Math.max(1, count - 2));
  return {
    slope,
    meanX,
    meanY,
    slopeStandardError: squares > 0 ? deviation / Math.sqrt(squares) : 0,
    deviation,
    count,
  };
}

/**
 * The same with Huber's loss, so that a drop-out or the break-away of a stroke does not bend it. The scale is the
 * median absolute deviation from the line of least squares; points on one line give that line.
 *
 * @source Huber, Ann. Math. Statist. 35 (1964) 73; standard error: Huber, Robust Statistics (1981), 7.6, without
 *         the correction for small numbers
 */
export function robustLine(x: Float64Array, y: Float64Array, from: number, to: number): LineFit {
  const plain = leastSquares(x, y, from, to);
  const scale = MAD_TO_DEVIATION * medianResidual(x, y, from, to, plain);
  if (!(scale > 1e-12 * Math.abs(plain.meanY))) return plain;
  const bound = HUBER * scale;
  const { slope, meanY } = settledLine(x, y, from, to, plain, bound);
  const fit = { ...plain, slope, meanY };
  return { ...fit, ...spread(x, y, from, to, fit, bound) };
}

/**
 * Steps of Newton downhill on Huber's loss, halved where a whole one goes too far. With the same points inside the bound
 * the next step is the answer, so that a few do where weighting again and again takes dozens.
 */
function settledLine(x: Float64Array, y: Float64Array, from: number, to: number, plain: LineFit, bound: number) {
  let { slope, meanY } = plain;
  let at = downhill(x, y, from, to, plain, bound);
  let pace = 1;
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const next = { ...plain, slope: slope + pace * at.slope, meanY: meanY + pace * at.height };
    const there = downhill(x, y, from, to, next, bound);
    const isSettled = Math.abs(pace * at.slope) <= 1e-14 * Math.abs(slope) + Number.MIN_VALUE;
    if (there.loss > at.loss && !isSettled) pace /= 2;
    else {
      ({ slope, meanY } = next);
      at = there;
      pace = 1;
    }
    if (isSettled) break;
  }
  return { slope, meanY };
}

/** Huber's loss of a line, and the step of slope and height that makes it least as long as the same points are inside. */
function downhill(
  x: Float64Array,
  y: Float64Array,
  from: number,
  to: number,
  { slope, meanX, meanY }: LineFit,
  bound: number,
): { readonly loss: number; readonly slope: number; readonly height: number } {
  let loss = 0;
  let inside = 0;
  let sumX = 0;
  let sumXX = 0;
  let lift = 0;
  let lean = 0;
  for (let i = from; i < to; i++) {
    const offX = x[i]! - meanX;
    const off = y[i]! - meanY - slope * offX;
    const clipped = off > bound ? bound : off < -bound ? -bound : off;
    loss += clipped * (off - clipped / 2);
    lift += clipped;
    lean += clipped * offX;
    if (clipped !== off) continue;
    inside++;
    sumX += offX;
    sumXX += offX * offX;
  }
  const determinant = inside * sumXX - sumX * sumX;
  if (!(determinant > 0)) return { loss, slope: 0, height: 0 };
  return {
    loss,
    slope: (inside * lean - sumX * lift) / determinant,
    height: (sumXX * lift - sumX * lean) / determinant,
  };
}

function spread(x: Float64Array, y: Float64Array, from: number, to: number, fit: LineFit, bound: number) {
  let clipped = 0;
  let inside = 0;
  let squares = 0;
  for (let i = from; i < to; i++) {
    const off = Math.abs(y[i]! - heightAt(fit, x[i]!));
    if (off <= bound) inside++;
    clipped += Math.min(off, bound) ** 2;
    squares += (x[i]! - fit.meanX) ** 2;
  }
  const count = to - from;
  const deviation = Math.sqrt(clipped / Math.max(1, count - 2)) / Math.max(0.1, inside / count);
  return { deviation, slopeStandardError: squares > 0 ? deviation / Math.sqrt(squares) : 0 };
}

function medianResidual(x: Float64Array, y: Float64Array, from: number, to: number, fit: LineFit): number {
  const off = new Float64Array(to - from);
  for (let i = from; i < to; i++) off[i - from] = Math.abs(y[i]! - heightAt(fit, x[i]!));
  const middle = off.length >> 1;
  bringToPlace(off, middle);
  if (off.length % 2 === 1) return off[middle]!;
  let below = 0;
  for (let i = 0; i < middle; i++) if (off[i]! > below) below = off[i]!;
  return (below + off[middle]!) / 2;
}
