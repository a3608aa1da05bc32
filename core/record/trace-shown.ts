import { appliedTorque } from '../procedure/setting.ts';
import type { Step } from '../procedure/step.ts';
import { analyseTrace, type TraceAnalysis } from '../trace/analyse.ts';
import { curveOf } from '../trace/curve.ts';
import { type TraceWindow, traceOptionsSchema } from '../trace/judged-by.ts';
import type { Samples } from '../trace/samples.ts';
import type { Trace } from './command.ts';
import { stepOf } from './decide-pull.ts';
import type { Pull } from './entry.ts';
import type { JobState } from './state.ts';
import { atFastener, windowOf } from './trace-evidence.ts';

/** The trace of a pull as it is drawn: torque over the turning of the fastener, strokes joined, ascending in angle. */
export interface ShownTrace {
  readonly angleDeg: Float64Array;
  /** N·m; of loosening as a positive figure. */
  readonly torqueNm: Float64Array;
  readonly analysis: TraceAnalysis;
  readonly window: TraceWindow;
  /** Angle from which the window of the angle counts, degrees; undefined: the curve never reached it. */
  readonly countsFromDeg: number | undefined;
}

/**
 * Reads the kept trace of a pull once more for drawing. The figures are those of the curve alone; what spoke against
 * the pull stands in its entry and is not judged again.
 *
 * @param trace as the wrench showed it
 */
export function shownTrace(state: JobState, pull: Pull, trace: Trace): ShownTrace {
  const joint = state.joints.find(({ ref }) => ref === pull.cell.jointRef);
  if (!joint) throw new Error('a pull belongs to a joint of its job');
  const step = stepOf(joint, pull.cell);
  const tool = joint.tools.findLast(({ wrench }) => wrench.id === pull.wrenchId);
  const lever = tool ? appliedTorque(1, tool.wrench.leverMm, tool.adapter) : undefined;
  const samples = tool ? atFastener(trace, lever?.ok ? lever.value.factor : 1, tool) : trace;
  const window = windowOf(step);
  const analysis = analyseTrace(samples, traceOptionsSchema.parse({}), window);
  const drawn = analysis.kind === 'loosening' ? turnedRound(samples) : curveOf(samples);
  const { angleDeg, torqueNm } = drawn;
  return { angleDeg, torqueNm, analysis, window, countsFromDeg: countedFrom(drawn, step) };
}

/** Loosening drawn like tightening: forward is the way it was turned, and only that is drawn. */
function turnedRound({ angleDeg, torqueNm }: Samples): { angleDeg: Float64Array; torqueNm: Float64Array } {
  const start = angleDeg[0] ?? 0;
  let furthest = 0;
  return {
    angleDeg: Float64Array.from(angleDeg, (deg) => {
      furthest = Math.max(furthest, Math.abs(deg - start));
      return furthest;
    }),
    torqueNm: Float64Array.from(torqueNm, (nm) => -nm),
  };
}

function countedFrom({ angleDeg, torqueNm }: Samples, { angle, angleFromNm }: Step): number | undefined {
  if (!angle) return undefined;
  if (angleFromNm === undefined) return angleDeg[0];
  for (let i = 0; i < torqueNm.length; i++) if (torqueNm[i]! >= angleFromNm) return angleDeg[i];
  return undefined;
}

/** A curve for the ground of another's drawing: angle from its own snug, few points. */
export interface GroundCurve {
  readonly fromSnugDeg: readonly number[];
  readonly torqueNm: readonly number[];
}

/**
 * Thins a curve to about `most` points, keeping the lowest and the highest torque of each piece of it, so that no peak
 * is lost.
 *
 * @returns undefined where no snug can be told, so that it cannot be laid over another
 */
export function groundCurve({ angleDeg, torqueNm, analysis }: ShownTrace, most: number): GroundCurve | undefined {
  if (analysis.kind === 'loosening' || !analysis.figures.snug) return undefined;
  const snugDeg = analysis.figures.snug.angleDeg;
  const kept = thinned(torqueNm, most);
  return {
    fromSnugDeg: kept.map((i) => rounded(angleDeg[i]! - snugDeg)),
    torqueNm: kept.map((i) => rounded(torqueNm[i]!)),
  };
}

const rounded = (value: number): number => Math.round(value * 1000) / 1000;

function thinned(values: Float64Array, most: number): readonly number[] {
  const pieces = Math.max(1, Math.floor(most / 2));
  if (values.length <= most) return Array.from(values, (_, i) => i);
  return Array.from({ length: pieces }, (_, piece) => {
    const from = Math.floor((piece * values.length) / pieces);
    const to = Math.floor(((piece + 1) * values.length) / pieces);
    return extremesIn(values, from, to);
  }).flat();
}

function extremesIn(values: Float64Array, from: number, to: number): readonly number[] {
  let lowest = from;
  let highest = from;
  for (let i = from + 1; i < to; i++) {
    if (values[i]! < values[lowest]!) lowest = i;
    if (values[i]! > values[highest]!) highest = i;
  }
  return lowest === highest ? [lowest] : [Math.min(lowest, highest), Math.max(lowest, highest)];
}
