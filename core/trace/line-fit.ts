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
  return weighted(x, y, from, to, undefined);
}

/**
 * The same with Huber's weights, so that a drop-out or the break-away of a stroke does not bend it. The scale is
 * the median absolute deviation from the line of least squares; points on one line give that line.
 *
 * @source Huber, Ann. Math. Statist. 35 (1964) 73; standard error: Huber, Robust Statistics (1981), 7.6, without
 *         the correction for small numbers
 */
export function robustLine(x: Float64Array, y: Float64Array, from: number, to: number): LineFit {
  let fit = leastSquares(x, y, from, to);
  const scale = MAD_TO_DEVIATION * medianResidual(x, y, from, to, fit);
  const bound = HUBER * scale;
  if (!(scale > 1e-12 * Math.abs(fit.meanY))) return fit;
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const next = weighted(x, y, from, to, { fit, bound });
    const settled = Math.abs(next.slope - fit.slope) <= 1e-14 * Math.abs(next.slope) + Number.MIN_VALUE;
    fit = next;
    if (settled) break;
  }
  return { ...fit, ...spread(x, y, from, to, fit, bound) };
}

function weighted(
  x: Float64Array,
  y: Float64Array,
  from: number,
  to: number,
  huber: { readonly fit: LineFit; readonly bound: number } | undefined,
): LineFit {
  const weightOf = (i: number): number => {
    if (!huber) return 1;
    const off = Math.abs(y[i]! - heightAt(huber.fit, x[i]!));
    return off <= huber.bound ? 1 : huber.bound / off;
  };
  let total = 0;
  let meanX = 0;
  let meanY = 0;
  let squares = 0;
  let products = 0;
  // West's running means: no difference of large sums
  for (let i = from; i < to; i++) {
    const weight = weightOf(i);
    total += weight;
    const offX = x[i]! - meanX;
    meanX += (offX * weight) / total;
    const offY = y[i]! - meanY;
    meanY += (offY * weight) / total;
    squares += weight * offX * (x[i]! - meanX);
    products += weight * offX * (y[i]! - meanY);
  }
  const slope = squares > 0 ? products / squares : 0;
  const fit = { slope, meanX, meanY, count: to - from };
  let residuals = 0;
  for (let i = from; i < to; i++) residuals += (y[i]! - meanY - slope * (x[i]! - meanX)) ** 2;
  const deviation = Math.sqrt(residuals / Math.max(1, to - from - 2));
  return { ...fit, deviation, slopeStandardError: squares > 0 ? deviation / Math.sqrt(squares) : 0 };
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
  off.sort();
  const middle = off.length >> 1;
  return off.length % 2 === 1 ? off[middle]! : (off[middle - 1]! + off[middle]!) / 2;
}
