import type { Curve } from './curve.ts';
import type { Gradient } from './gradient.ts';
import { heightAt, leastSquares, reaches } from './line-fit.ts';
import type { Elastic, Phases, Point } from './phases.ts';

/** Where a fastener yields, between the points of the curve. */
export interface YieldPoint {
  readonly point: Point;
  readonly angleDeg: number;
  readonly torqueNm: number;
}

/** Over what share of a window to either side the slope is evened, and how far a round goes towards what it finds. */
const REACH = 0.8;
const PACE = 0.6;
const MOST_ROUNDS = 12;
/** A slope that comes back over its bound for less of a window has not recovered. */
const RECOVERY = 0.4;

/**
 * Where the slope has fallen to a share of the elastic one and stays there for a window.
 *
 * @param share 0.5 is usual, 0.25 to 0.75 in use
 * @source gradient-controlled tightening: patents US 4 104 780 (1978) and US 4 894 767, abstracts; 0.5 common practice
 */
export function yieldByGradient(curve: Curve, phases: Phases, share: number): YieldPoint | undefined {
  const { elastic, gradient } = phases;
  if (!elastic) return undefined;
  const { angleDeg, torqueNm, count } = curve;
  const { slope, windowDeg, noiseNm } = gradient;
  const bound = share * elastic.line.slope;
  let from = -1;
  let below = -1;
  for (let i = elastic.to; i < count; i++) {
    if (slope[i]! >= bound) {
      // noise may lift it again for a moment
      if (from >= 0 && angleDeg[i]! - angleDeg[below]! > RECOVERY * windowDeg) from = -1;
      continue;
    }
    below = i;
    if (from < 0) from = i;
    const shortNm = heightAt(elastic.line, angleDeg[i]!) - torqueNm[i]!;
    const isHeld = angleDeg[i]! - angleDeg[from]! >= 0.75 * windowDeg;
    if (!isHeld || shortNm <= Math.max(4 * noiseNm, 0.02 * torqueNm[i]!)) continue;
    const atDeg = evenedDeg(curve, gradient, from, angleDeg[elastic.to - 1]!, bound);
    return yieldAt(curve, atDeg, windowDeg);
  }
  return undefined;
}

/** Points within a reach to either side of an angle: the first, and the first after them. */
function about({ angleDeg, count }: Curve, near: Point, atDeg: number, reachDeg: number): readonly [Point, Point] {
  let from = near;
  while (from > 0 && angleDeg[from - 1]! >= atDeg - reachDeg) from--;
  while (from < count - 1 && angleDeg[from]! < atDeg - reachDeg) from++;
  let to = from;
  while (to < count && angleDeg[to]! <= atDeg + reachDeg) to++;
  return [from, to];
}

/**
 * The slope passes its bound where a line through it does, laid over most of a window to either side: noise moves that
 * less. Where that is elsewhere the line is laid anew about it, as the slope of yielding falls along no line.
 */
function evenedDeg(curve: Curve, { slope, windowDeg }: Gradient, near: Point, leastDeg: number, bound: number): number {
  let atDeg = curve.angleDeg[near]!;
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const [from, to] = about(curve, near, atDeg, REACH * windowDeg);
    const line = leastSquares(curve.angleDeg, slope, from, to);
    if (to - from < 3 || !(line.slope < 0)) break;
    const wayDeg = Math.max(-windowDeg, Math.min(windowDeg, reaches(line, bound) - atDeg));
    atDeg = Math.max(leastDeg, atDeg + PACE * wayDeg);
    if (Math.abs(wayDeg) < 0.02 * windowDeg) break;
  }
  return atDeg;
}

/** The nearest point, with the torque of a line through those about it: a step of the display counts less. */
function yieldAt(curve: Curve, atDeg: number, windowDeg: number): YieldPoint {
  const { angleDeg, torqueNm, count } = curve;
  let point = 0;
  while (point < count - 1 && (angleDeg[point]! + angleDeg[point + 1]!) / 2 < atDeg) point++;
  const [from, to] = about(curve, point, atDeg, windowDeg / 2);
  const evenNm = to - from < 3 ? torqueNm[point]! : heightAt(leastSquares(angleDeg, torqueNm, from, to), atDeg);
  return { point, angleDeg: atDeg, torqueNm: evenNm };
}

/**
 * Where torque lies below the elastic line, carried on, by what the offset in angle is worth; steadier than the
 * gradient where there is noise.
 *
 * @source difference to a line that continues the straight part: patent US 3 974 883 (1976), abstract
 */
export function yieldByOffset(
  { angleDeg, torqueNm, count }: Curve,
  elastic: Elastic,
  offsetDeg: number,
): Point | undefined {
  const { line } = elastic;
  for (let i = elastic.to; i < count; i++)
    if (heightAt(line, angleDeg[i]!) - torqueNm[i]! >= line.slope * offsetDeg) return i;
  return undefined;
}
