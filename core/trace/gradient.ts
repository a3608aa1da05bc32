import { bringToPlace } from '../statistics/order-statistics.ts';
import type { Curve } from './curve.ts';

/** Local slope along a curve. */
export interface Gradient {
  /** N·m a degree at each point of the curve. */
  readonly slope: Float64Array;
  /** Width of the window over which lines were fitted, degrees. */
  readonly windowDeg: number;
  /** Noise of one point about its line, N·m. */
  readonly noiseNm: number;
  /** Standard error of one slope, N·m a degree. */
  readonly error: number;
}

const FINEST = 1 / 20;
const COARSEST = 1 / 5;
/** Windows grow until noise moves the slope by less than this share of the mean slope. */
const WANTED_ERROR = 0.05;

/**
 * Slope of the least-squares line over a window about each point.
 *
 * @param loadedDeg turning over which the torque is built up, degrees
 * @param windowDeg width that was asked for; left out: as small as the noise allows, from a twentieth to a fifth of
 *                  the loaded turning
 * @source g = Σ(θ-θ̄)(T-T̄)/Σ(θ-θ̄)², standard error s/√Σ(θ-θ̄)²
 */
export function gradientOf(curve: Curve, loadedDeg: number, meanSlope: number, windowDeg?: number): Gradient {
  const spacingDeg = Math.max(curve.extremes.stepDeg, spacingOf(curve));
  const least = Math.max(4 * spacingDeg, FINEST * loadedDeg);
  const first = slopes(curve, windowDeg ?? least);
  const error = errorOf(first.noiseNm, spacingDeg, windowDeg ?? least);
  const wanted = WANTED_ERROR * meanSlope;
  if (windowDeg !== undefined || error <= wanted) return { ...first, error };
  const wide = Math.min(
    Math.max(least, COARSEST * loadedDeg),
    ((first.noiseNm * Math.sqrt(12 * spacingDeg)) / wanted) ** (2 / 3),
  );
  const second = slopes(curve, wide);
  return { ...second, error: errorOf(second.noiseNm, spacingDeg, wide) };
}

const errorOf = (noiseNm: number, spacingDeg: number, windowDeg: number): number =>
  (noiseNm * Math.sqrt(12 * spacingDeg)) / windowDeg ** 1.5;

/** Median distance of two points next to each other over the last part of the curve, degrees. */
function spacingOf({ angleDeg, count }: Curve): number {
  const from = Math.max(1, count - 200);
  const steps = new Float64Array(Math.max(0, count - from));
  for (let i = from; i < count; i++) steps[i - from] = angleDeg[i]! - angleDeg[i - 1]!;
  return middleOf(steps);
}

/** Running sums: each point enters and leaves once. */
function slopes({ angleDeg, torqueNm, count }: Curve, windowDeg: number): Omit<Gradient, 'error'> {
  const slope = new Float64Array(count);
  const off = new Float64Array(count);
  const originDeg = angleDeg[count >> 1] ?? 0;
  const half = windowDeg / 2 + 1e-9;
  let from = 0;
  let to = 0;
  let n = 0;
  let x = 0;
  let y = 0;
  let xx = 0;
  let xy = 0;
  for (let i = 0; i < count; i++) {
    while (to < count && angleDeg[to]! <= angleDeg[i]! + half) {
      const deg = angleDeg[to]! - originDeg;
      n++;
      x += deg;
      y += torqueNm[to]!;
      xx += deg * deg;
      xy += deg * torqueNm[to]!;
      to++;
    }
    while (angleDeg[from]! < angleDeg[i]! - half) {
      const deg = angleDeg[from]! - originDeg;
      n--;
      x -= deg;
      y -= torqueNm[from]!;
      xx -= deg * deg;
      xy -= deg * torqueNm[from]!;
      from++;
    }
    const squares = xx - (x * x) / n;
    slope[i] = n > 2 && squares > 1e-9 ? (xy - (x * y) / n) / squares : lean(angleDeg, torqueNm, i, count);
    off[i] = Math.abs(torqueNm[i]! - y / n - slope[i]! * (angleDeg[i]! - originDeg - x / n));
  }
  return { slope, windowDeg, noiseNm: 1.4826 * medianOfSome(off) };
}

/** Slope to the neighbours, where the window holds too few points. */
function lean(angleDeg: Float64Array, torqueNm: Float64Array, i: number, count: number): number {
  const from = Math.max(0, i - 1);
  const to = Math.min(count - 1, i + 1);
  const way = angleDeg[to]! - angleDeg[from]!;
  return way > 0 ? (torqueNm[to]! - torqueNm[from]!) / way : 0;
}

/** Of about five hundred of them, which is near enough for a noise. */
function medianOfSome(values: Float64Array): number {
  const stride = Math.max(1, Math.floor(values.length / 500));
  const some = new Float64Array(Math.floor(values.length / stride));
  for (let i = 0; i < some.length; i++) some[i] = values[i * stride]!;
  return middleOf(some);
}

function middleOf(values: Float64Array): number {
  const middle = values.length >> 1;
  bringToPlace(values, middle);
  return values[middle] ?? 0;
}
