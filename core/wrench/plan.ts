import { ok, type Result } from '../failure/failure.ts';
import { type ToolClass, toolClass } from './tool-class.ts';
import type { Direction, Wrench } from './wrench.ts';

/** Repeats at each torque, and loads to the highest torque before the first. */
export const REPEATS = 5;
const PRELOADINGS: Readonly<Record<ToolClass['type'], number>> = { I: 1, II: 5 };
const SHARES = [0.2, 0.6, 1];

/** One thing to do in a calibration, in order. */
export type CalibrationStep =
  | { readonly kind: 'preload'; readonly direction: Direction; readonly torqueNm: number; readonly times: number }
  | { readonly kind: 'zero'; readonly direction: Direction }
  | { readonly kind: 'point'; readonly direction: Direction; readonly torqueNm: number; readonly repeats: number };

export interface CalibrationPlan {
  readonly steps: readonly CalibrationStep[];
  readonly targetsNm: readonly number[];
  readonly directions: readonly Direction[];
  readonly repeats: number;
  readonly preloadings: number;
  /** Seconds in which a setting wrench is loaded from 80 % of its target to the target. */
  readonly finalApproachS?: readonly [least: number, most: number];
}

type Planned = Pick<Wrench, 'type' | 'class' | 'lowestNm' | 'highestNm' | 'directions'>;

/**
 * The guided sequence that the type of a wrench orders: for each direction in use preloadings at the highest torque,
 * zeroing where it indicates, then the points upwards with their repeats.
 *
 * @returns refused with field `class` where the type has no such class
 * @source ISO 6789-1:2017, clause on calibration: 20 %, 60 %, 100 % of the highest torque, from the lowest marked one
 * where that is lower; five repeats; one preloading for type I, five for type II; final 20 % in 0.5 s to 4 s for type II
 * (from memory and secondary sources)
 */
export function calibrationPlan(wrench: Planned): Result<CalibrationPlan> {
  const known = toolClass(wrench.type, wrench.class);
  if (!known.ok) return known;
  const targetsNm = targetsOf(wrench, known.value);
  const directions = wrench.directions ?? ['clockwise'];
  const preloadings = PRELOADINGS[wrench.type];
  return ok({
    targetsNm,
    directions,
    repeats: REPEATS,
    preloadings,
    steps: directions.flatMap((direction) => inDirection(direction, wrench, targetsNm, preloadings)),
    ...(wrench.type === 'II' ? { finalApproachS: [0.5, 4] as const } : {}),
  });
}

function inDirection(
  direction: Direction,
  { type, highestNm }: Planned,
  targetsNm: readonly number[],
  times: number,
): readonly CalibrationStep[] {
  return [
    { kind: 'preload', direction, torqueNm: highestNm, times },
    ...(type === 'I' ? [{ kind: 'zero', direction } as const] : []),
    ...targetsNm.map((torqueNm) => ({ kind: 'point', direction, torqueNm, repeats: REPEATS }) as const),
  ];
}

/** A wrench marked from less than 20 % on is looked at there too; one that begins higher, at its beginning. */
function targetsOf({ lowestNm, highestNm }: Planned, { isFixed }: ToolClass): readonly number[] {
  if (isFixed) return [highestNm];
  const above = SHARES.map((share) => round(share * highestNm)).filter((torqueNm) => torqueNm > lowestNm);
  return lowestNm > 0 ? [lowestNm, ...above] : above;
}

/** Products with 0.6 carry binary digits that nobody can set. */
const round = (torqueNm: number): number => Number(torqueNm.toPrecision(12));
