import { middleByWeight } from '../statistics/order-statistics.ts';
import type { Curve } from './curve.ts';
import { type Gradient, gradientOf } from './gradient.ts';
import { heightAt, type LineFit, robustLine } from './line-fit.ts';
import { type StickSlip, stickSlipOf } from './stick-slip.ts';

/** A point of the curve, by its number. */
export type Point = number;

/** Where the straight part lies, and its line. */
export interface Elastic {
  readonly from: Point;
  /** First point after it. */
  readonly to: Point;
  readonly line: LineFit;
}

/** What the parts of a tightening curve are. */
export interface Phases {
  readonly gradient: Gradient;
  /** Highest point of the curve. */
  readonly top: Point;
  readonly elastic: Elastic | undefined;
  readonly stickSlip: StickSlip | undefined;
  readonly snug: { readonly point: Point; readonly angleDeg: number } | undefined;
}

const FEWEST_POINTS = 6;
/** Share of the torque's rise under which a slope says nothing of the straight part. */
const FOOT = 0.15;
/** How far the slope may leave that of the straight part, as a share of it. */
const COARSE = 0.25;
const FINE = 0.12;
/** Parts come together until the slope is half of the straight part's. */
const SNUG_SHARE = 0.5;
const PERIODS = 3;
/** Noise may take the slope away for less of a window than this. */
const MOMENT = 0.15;

/** Finds the straight part, and where the parts came together. */
export function phasesOf(curve: Curve, windowDeg?: number): Phases {
  const { angleDeg, torqueNm, count } = curve;
  const top = topOf(torqueNm, count);
  const loadedDeg = loadedTurnDeg(curve, top);
  const meanSlope = loadedDeg > 0 ? torqueNm[top]! / loadedDeg : 0;
  const stickSlip = stickSlipOf(curve, top);
  // a window of whole periods sees the slope through the sawing
  const widthDeg = windowDeg ?? (stickSlip && PERIODS * stickSlip.periodDeg);
  const smooth = gradientOf(curve, loadedDeg, meanSlope, widthDeg);
  const gradient = stickSlip ? { ...smooth, error: Math.max(smooth.error, sawingError(stickSlip)) } : smooth;
  const elastic = count < FEWEST_POINTS ? undefined : elasticPart(curve, gradient, top);
  const snug = elastic && snugAt(angleDeg, gradient, elastic);
  return { gradient, top, elastic, stickSlip, snug };
}

/** How far a sine of that height turns the least-squares line over so many of its periods: 6A/(πnw). */
const sawingError = ({ share, meanNm, periodDeg }: StickSlip): number =>
  (3 * share * meanNm) / (Math.PI * PERIODS * PERIODS * periodDeg);

function topOf(torqueNm: Float64Array, count: number): Point {
  let top = 0;
  for (let i = 1; i < count; i++) if (torqueNm[i]! > torqueNm[top]!) top = i;
  return top;
}

/** Twice the turning from half the rise to the top. */
function loadedTurnDeg({ angleDeg, torqueNm }: Curve, top: Point): number {
  const footNm = torqueNm[0] ?? 0;
  const half = (footNm + (torqueNm[top] ?? 0)) / 2;
  let i = top;
  while (i > 0 && torqueNm[i]! > half) i--;
  const wholeDeg = (angleDeg[top] ?? 0) - (angleDeg[0] ?? 0);
  return Math.min(wholeDeg, 2 * ((angleDeg[top] ?? 0) - (angleDeg[i] ?? 0)));
}

function elasticPart(curve: Curve, gradient: Gradient, top: Point): Elastic | undefined {
  const { angleDeg, torqueNm } = curve;
  const first = footOf(curve, top);
  const middle = typicalSlope(curve, gradient.slope, first, top);
  if (!(middle > 0)) return undefined;
  const slack = (2.5 * gradient.error) / middle;
  const coarse = steepestRun(curve, gradient, first, top, middle, COARSE + slack);
  if (!coarse) return undefined;
  const rise = torqueNm[coarse.to - 1]! - torqueNm[coarse.from]!;
  const way = angleDeg[coarse.to - 1]! - angleDeg[coarse.from]!;
  const mean = way > 0 ? rise / way : middle;
  const fine = steepestRun(curve, gradient, first, top, mean, FINE + slack) ?? coarse;
  const { from, to } = settled(curve, fine, gradient);
  const line = robustLine(angleDeg, torqueNm, from, to);
  return line.slope > 0 ? { from, to, line } : undefined;
}

/** First point that carries a share of the torque. */
function footOf({ torqueNm }: Curve, top: Point): Point {
  let leastNm = torqueNm[0]!;
  for (let i = 0; i <= top; i++) leastNm = Math.min(leastNm, torqueNm[i]!);
  const footNm = leastNm + FOOT * (torqueNm[top]! - leastNm);
  let i = top;
  while (i > 0 && torqueNm[i - 1]! > footNm) i--;
  return i;
}

/** Slope with which half of the torque has been built up. */
function typicalSlope({ angleDeg }: Curve, slope: Float64Array, from: Point, to: Point): number {
  const slopes = slope.slice(from, to + 1);
  const risesNm = slopes.map(
    (one, i) => Math.max(0, one) * (angleDeg[from + i]! - angleDeg[Math.max(0, from + i - 1)]!),
  );
  const wholeNm = risesNm.reduce((sum, riseNm) => sum + riseNm, 0);
  return middleByWeight(slopes, risesNm, wholeNm / 2);
}

interface Run {
  readonly from: Point;
  readonly to: Point;
}

/** Of the runs in which the slope stays near a figure, but for a moment, the one that builds up most torque. */
function steepestRun(
  { angleDeg, torqueNm }: Curve,
  { slope, windowDeg }: Gradient,
  first: Point,
  top: Point,
  near: number,
  share: number,
): Run | undefined {
  let best: Run | undefined;
  let bestNm = 0;
  let from = -1;
  let inside = -1;
  for (let i = first; i <= top + 1; i++) {
    if (i <= top && Math.abs(slope[i]! - near) <= share * near) {
      if (from < 0) from = i;
      inside = i;
      continue;
    }
    if (from < 0 || (i <= top && angleDeg[i]! - angleDeg[inside]! < MOMENT * windowDeg)) continue;
    const riseNm = torqueNm[inside]! - torqueNm[from]!;
    if (inside - from >= 2 && riseNm > bestNm) {
      bestNm = riseNm;
      best = { from, to: inside + 1 };
    }
    from = -1;
  }
  return best;
}

/** Takes off what the window of the slope smears in at either end, as long as enough is left; then what bends away. */
function settled({ angleDeg, torqueNm }: Curve, run: Run, { windowDeg, noiseNm }: Gradient): Run {
  let { from, to } = run;
  const quarter = windowDeg / 4;
  const fromDeg = angleDeg[from]! + quarter;
  const toDeg = angleDeg[to - 1]! - quarter;
  if (toDeg - fromDeg > 0.6 * (angleDeg[to - 1]! - angleDeg[from]!)) {
    while (angleDeg[from]! < fromDeg) from++;
    while (angleDeg[to - 1]! > toDeg) to--;
  }
  const third = Math.floor((to - from) / 4);
  if (third < 3) return { from, to };
  const core = robustLine(angleDeg, torqueNm, from + third, to - third);
  const bound = Math.max(2 * noiseNm, 0.004 * Math.abs(torqueNm[to - 1]! - torqueNm[from]!));
  const bends = (i: Point): boolean => Math.abs(torqueNm[i]! - heightAt(core, angleDeg[i]!)) > bound;
  while (from < to - 2 * third && bends(from) && bends(from + 1)) from++;
  while (to > from + 2 * third && bends(to - 1) && bends(to - 2)) to--;
  return { from, to };
}

/** Goes back from the straight part to where the slope passes half of its own, and stays below for some way. */
function snugAt(angleDeg: Float64Array, { slope, windowDeg }: Gradient, { from, line }: Elastic): Phases['snug'] {
  const bound = SNUG_SHARE * line.slope;
  let i = from;
  while (i > 0) {
    while (i > 0 && slope[i]! >= bound) i--;
    if (slope[i]! >= bound) break;
    let below = 0;
    let j = i;
    while (j >= 0 && angleDeg[j]! > angleDeg[i]! - windowDeg / 2) below += slope[j--]! < bound ? 1 : 0;
    if (2 * below >= i - j) {
      const share = (bound - slope[i]!) / (slope[i + 1]! - slope[i]!);
      return { point: i + 1, angleDeg: angleDeg[i]! + share * (angleDeg[i + 1]! - angleDeg[i]!) };
    }
    i = j;
  }
  return { point: 0, angleDeg: angleDeg[0]! };
}
