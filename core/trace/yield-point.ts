import type { Curve } from './curve.ts';
import type { Gradient } from './gradient.ts';
import { heightAt, leastSquares, reaches } from './line-fit.ts';
import type { Elastic, Phases, Point } from './phases.ts';

/**
 * Where the slope has fallen to a share of the elastic one and stays there for a window.
 *
 * @param share 0.5 is usual, 0.25 to 0.75 in use
 * @source gradient-controlled tightening: patents US 4 104 780 (1978) and US 4 894 767, abstracts; 0.5 common practice
 */
export function yieldByGradient(curve: Curve, phases: Phases, share: number): Point | undefined {
  const { elastic, gradient } = phases;
  if (!elastic) return undefined;
  const { angleDeg, torqueNm, count } = curve;
  const { slope, windowDeg, noiseNm } = gradient;
  const bound = share * elastic.line.slope;
  let from = -1;
  for (let i = elastic.to; i < count; i++) {
    if (slope[i]! >= bound) {
      from = -1;
      continue;
    }
    if (from < 0) from = i;
    const shortNm = heightAt(elastic.line, angleDeg[i]!) - torqueNm[i]!;
    const isHeld = angleDeg[i]! - angleDeg[from]! >= 0.75 * windowDeg;
    if (isHeld && shortNm > Math.max(4 * noiseNm, 0.02 * torqueNm[i]!))
      return evened(curve, phases.gradient, from, bound);
  }
  return undefined;
}

/** The slope passes its bound where a line through it, more than half a window to either side, does: noise moves that less. */
function evened({ angleDeg, count }: Curve, { slope, windowDeg }: Gradient, near: Point, bound: number): Point {
  const reach = 0.6 * windowDeg;
  let from = near;
  while (from > 0 && angleDeg[from - 1]! >= angleDeg[near]! - reach) from--;
  let to = near;
  while (to < count && angleDeg[to]! <= angleDeg[near]! + reach) to++;
  const line = leastSquares(angleDeg, slope, from, to);
  const deg = reaches(line, bound);
  if (!(line.slope < 0 && Math.abs(deg - angleDeg[near]!) < windowDeg)) return near;
  let point = from;
  while (point < to - 1 && (angleDeg[point]! + angleDeg[point + 1]!) / 2 < deg) point++;
  return point;
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
