import type { Curve } from './curve.ts';
import { heightAt, robustLine } from './line-fit.ts';
import type { Point } from './phases.ts';

/** Friction that sticks and lets go by turns: torque saws about its line. */
export interface StickSlip {
  /** From peak to peak as a share of the torque. */
  readonly share: number;
  readonly periodDeg: number;
  readonly fromDeg: number;
  readonly meanNm: number;
}

const LEAST_SHARE = 0.05;
const LEAST_LIKENESS = 0.4;

/** Share of the top torque from which on a curve is looked at. */
const FROM_SHARE = 0.3;
const FEWEST_PERIODS = 3;

/**
 * Sawing of the torque about a line with one period that repeats, in the upper part of the curve.
 *
 * @source peak to peak over 5 % of the torque with one dominant period: common practice
 */
export function stickSlipOf({ angleDeg, torqueNm }: Curve, top: Point): StickSlip | undefined {
  let from = top;
  while (from > 0 && torqueNm[from - 1]! > FROM_SHARE * torqueNm[top]!) from--;
  const count = top + 1 - from;
  if (count < 16) return undefined;
  const line = robustLine(angleDeg, torqueNm, from, top + 1);
  const off = new Float64Array(count);
  let squares = 0;
  for (let i = 0; i < count; i++) {
    off[i] = (torqueNm[from + i]! - heightAt(line, angleDeg[from + i]!)) / torqueNm[from + i]!;
    squares += off[i]! ** 2;
  }
  // a sine's height from peak to peak is 2√2 times its root mean square
  const share = 2 * Math.SQRT2 * Math.sqrt(squares / count);
  if (!(share > LEAST_SHARE)) return undefined;
  const lag = dominantLag(off, squares);
  if (lag === undefined) return undefined;
  const spacingDeg = (angleDeg[top]! - angleDeg[from]!) / (count - 1);
  return { share, periodDeg: lag * spacingDeg, fromDeg: angleDeg[from]!, meanNm: line.meanY };
}

/** First lag at which the sawing is most like itself, after it has been unlike. */
function dominantLag(off: Float64Array, squares: number): number | undefined {
  let best: number | undefined;
  let likeness = LEAST_LIKENESS;
  let wasUnlike = false;
  for (let lag = 1; lag <= off.length / FEWEST_PERIODS; lag++) {
    let product = 0;
    for (let i = 0; i + lag < off.length; i++) product += off[i]! * off[i + lag]!;
    const like = (product / squares) * (off.length / (off.length - lag));
    wasUnlike ||= like < 0;
    if (!wasUnlike || like <= likeness) continue;
    likeness = like;
    best = lag;
  }
  return best;
}
