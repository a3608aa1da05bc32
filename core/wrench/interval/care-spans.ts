import { type BeforeUseCheck, checkDeviationPercent } from '../before-use-check.ts';
import type { Calibration } from '../calibration.ts';
import { type JudgedRun, judgeComparison } from '../judge-calibration.ts';
import { permissibleDeviationPercent, toolClass } from '../tool-class.ts';
import type { CalibrationSummary, Wrench } from '../wrench.ts';
import type { Found } from './history.ts';

/** What is kept of a wrench, as far as it tells how long it stays inside its limits. */
export interface CareSoFar {
  readonly wrench: Wrench;
  readonly summaries: readonly Pick<CalibrationSummary, 'calibratedOn' | 'conforms'>[];
  readonly calibrations: readonly Calibration[];
  readonly checks: readonly BeforeUseCheck[];
}

/** From one calibration to the next; the days are ISO 8601. Pulls are counted by who has them. */
export interface CareSpan {
  readonly after: string;
  readonly to: string;
  readonly found: Found;
}

/**
 * How a wrench was found, calibration by calibration, the oldest first. A calibration typed from paper tells no
 * readings as found, so it only begins a span; one that left the wrench off begins none, since it failed before.
 */
export function careSpans(care: CareSoFar): readonly CareSpan[] {
  const ordered = care.calibrations.toSorted((a, b) => (a.calibratedOn < b.calibratedOn ? -1 : 1));
  return ordered.flatMap((calibration, index) => {
    const begin = lastBefore(care.summaries, calibration.calibratedOn);
    if (!begin || begin.conforms === false) return [];
    const runs = judgeComparison(calibration.asFound, care.wrench, calibration, '');
    if (!runs.ok) return [];
    const { calibratedOn: after } = begin;
    const to = calibration.calibratedOn;
    const isIn = runs.value.every(({ evaluated }) => evaluated.conforms);
    const goodOn = isIn ? undefined : lastGoodCheck(care, after, to);
    const before = ordered[index - 1];
    const found: Found = {
      days: daysBetween(after, to),
      found: isIn ? 'in' : 'out',
      ...(goodOn === undefined ? {} : { goodAtDays: daysBetween(after, goodOn) }),
      ...(before?.calibratedOn === after ? driftFrom(before, runs.value, care.wrench) : {}),
    };
    return [{ after, to, found }];
  });
}

const daysBetween = (from: string, to: string): number =>
  (Date.parse(to.slice(0, 10)) - Date.parse(from.slice(0, 10))) / 86_400_000;

const lastBefore = (summaries: CareSoFar['summaries'], day: string) =>
  summaries
    .filter(({ calibratedOn }) => calibratedOn < day)
    .toSorted((a, b) => (a.calibratedOn < b.calibratedOn ? -1 : 1))
    .at(-1);

/** A check counts as good only where its own uncertainty cannot have hidden an error. */
function lastGoodCheck({ checks, wrench }: CareSoFar, after: string, to: string): string | undefined {
  const known = toolClass(wrench.type, wrench.class);
  if (!known.ok) return undefined;
  const limitPercent = permissibleDeviationPercent(known.value, wrench.highestNm);
  return checks
    .filter((check) => Math.abs(checkDeviationPercent(check)) + (check.expandedUncertaintyPercent ?? 0) <= limitPercent)
    .map(({ at }) => at.slice(0, 10))
    .filter((day) => day > after && day < to)
    .toSorted()
    .at(-1);
}

/** The deviation that was greatest as found, and how the calibration before had left the same point. */
function driftFrom(
  before: Calibration,
  found: readonly JudgedRun[],
  wrench: Wrench,
): Pick<Found, 'foundPercent' | 'leftPercent'> {
  const worst = pointsOf(found).reduce<PointOf | undefined>(
    (greatest, point) =>
      greatest && Math.abs(greatest.meanDeviationPercent) >= Math.abs(point.meanDeviationPercent) ? greatest : point,
    undefined,
  );
  const runs = judgeComparison(before.asLeft ?? before.asFound, wrench, before, '');
  if (!worst || !runs.ok) return {};
  const left = pointsOf(runs.value).find(
    ({ targetNm, direction }) => targetNm === worst.targetNm && direction === worst.direction,
  );
  if (!left) return {};
  return { foundPercent: held(worst.meanDeviationPercent), leftPercent: held(left.meanDeviationPercent) };
}

/** Beyond its own value a wrench is broken; how far beyond tells no drift. */
const held = (percent: number): number => Math.min(Math.max(percent, -100), 100);

const pointsOf = (runs: readonly JudgedRun[]) =>
  runs.flatMap(({ direction, evaluated }) => evaluated.points.map((point) => ({ direction, ...point })));
type PointOf = ReturnType<typeof pointsOf>[number];
