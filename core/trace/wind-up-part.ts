import type { Curve } from './curve.ts';
import { type Phases, type Point, phasesOf } from './phases.ts';
import { yieldByGradient } from './yield-point.ts';

/** A hand wrench and its extension wind up by no more than this (common practice). */
const MOST_DEG = 12;
const HALF_SLOPE = 0.5;

/**
 * Where the wind-up of the wrench ends on a fastener that was tight: the steepest part begins with the trace and bends
 * within a few degrees. The first point that belongs to the turning; undefined where nothing winds up.
 */
export function windUpEnd(curve: Curve, phases: Phases): Point | undefined {
  if (phases.snug?.point !== 0) return undefined;
  const bend = yieldByGradient(curve, phases, HALF_SLOPE)?.point;
  if (bend === undefined || curve.angleDeg[bend]! - curve.angleDeg[0]! > MOST_DEG) return undefined;
  const { slope } = phases.gradient;
  let point = bend;
  // break-away may overshoot: turning begins where torque no longer falls
  while (point < curve.count - 1 && slope[point]! < 0) point++;
  return point;
}

/** The same curve from a point on, and its parts. */
export function readFrom(curve: Curve, point: Point, windowDeg?: number): { curve: Curve; phases: Phases } {
  const rest: Curve = {
    ...curve,
    angleDeg: curve.angleDeg.subarray(point),
    torqueNm: curve.torqueNm.subarray(point),
    index: curve.index.subarray(point),
    count: curve.count - point,
  };
  return { curve: rest, phases: phasesOf(rest, windowDeg) };
}
