import { studentT } from '../statistics/distributions/student-t.ts';
import { type LineFit, lineFit, nextError } from '../statistics/line-fit.ts';

/** Deviation of a wrench at one torque on a day; percent of the reference value. */
export interface DeviationOn {
  /** ISO 8601 day. */
  readonly on: string;
  readonly deviationPercent: number;
  readonly standardUncertaintyPercent: number;
  /** As left after an adjustment: what came before says nothing of what comes after. */
  readonly isAdjusted: boolean;
}

/** What the trend says of the limits. */
export type Outlook =
  | { readonly kind: 'too-few'; readonly count: number }
  | { readonly kind: 'out-already' }
  /** Not within the years that are looked ahead. */
  | { readonly kind: 'stays'; readonly years: number }
  /** Months as ISO 8601, such as 2027-05; `about` is missing where only the band reaches a limit. */
  | { readonly kind: 'leaves'; readonly about?: string; readonly earliest: string; readonly latest?: string };

export interface Drift {
  /** Those since the last adjustment, which the trend is drawn through. */
  readonly history: readonly DeviationOn[];
  /** Percent a year with the half width of its 95 % interval; undefined for fewer than three. */
  readonly slopePercentPerYear: number | undefined;
  readonly slopeHalfWidth: number | undefined;
  /** The interval of the slope leaves out 0. */
  readonly isTrend: boolean;
  readonly outlook: Outlook;
  /** Line with the 95 % band of a next calibration, from the first day on; empty for fewer than three. */
  readonly band: readonly {
    readonly on: string;
    readonly value: number;
    readonly low: number;
    readonly high: number;
  }[];
}

const DAY_MS = 86_400_000;
const YEAR_DAYS = 365.25;
/** Further ahead no trend of a hand tool is believed. */
const AHEAD_YEARS = 5;
const STEP_DAYS = 7;

/**
 * How a wrench drifts at one torque and when that takes it out of its limits.
 *
 * @param history in the order of time
 * @param limitPercent permissible deviation, on either side
 * @source method 2 of ILAC-G24:2007 / OIML D 10 (control of drift); prediction band of a line: NIST/SEMATECH e-Handbook,
 * 4.1.4.1
 */
export function driftOf(history: readonly DeviationOn[], limitPercent: number): Drift {
  const from = history.findLastIndex(({ isAdjusted }) => isAdjusted);
  const since = history.slice(Math.max(from, 0));
  const last = since.at(-1);
  const [first] = since;
  const days = new Set(since.map(({ on }) => on)).size;
  const none = { history: since, slopePercentPerYear: undefined, slopeHalfWidth: undefined, isTrend: false, band: [] };
  if (last && Math.abs(last.deviationPercent) > limitPercent) return { ...none, outlook: { kind: 'out-already' } };
  if (!first || !last || since.length < 3 || days < 2)
    return { ...none, outlook: { kind: 'too-few', count: since.length } };
  const fit = lineFit(since.map(({ on, deviationPercent }) => ({ x: dayOf(on), y: deviationPercent })));
  const t = studentT(fit.count - 2).quantileAbove(0.025);
  const half = t * (fit.slopeError ?? 0) * YEAR_DAYS;
  return {
    history: since,
    slopePercentPerYear: fit.slope * YEAR_DAYS,
    slopeHalfWidth: half,
    isTrend: Math.abs(fit.slope * YEAR_DAYS) > half,
    outlook: outlookOf(fit, t, dayOf(last.on), limitPercent),
    band: bandOf(fit, t, dayOf(first.on), dayOf(last.on) + YEAR_DAYS),
  };
}

const dayOf = (on: string): number => Date.parse(on.slice(0, 10)) / DAY_MS;
const isoOf = (day: number): string => new Date(day * DAY_MS).toISOString().slice(0, 10);

const valueAt = ({ intercept, slope }: LineFit, day: number): number => intercept + slope * day;

function bandOf(fit: LineFit, t: number, from: number, to: number): Drift['band'] {
  const steps = 24;
  return Array.from({ length: steps + 1 }, (_, step) => {
    const day = from + ((to - from) * step) / steps;
    const value = valueAt(fit, day);
    const reach = t * (nextError(fit, day) ?? 0);
    return { on: isoOf(day), value, low: value - reach, high: value + reach };
  });
}

/** Week by week ahead: where the band, the line, and the far side of the band have left the limits. */
function outlookOf(fit: LineFit, t: number, from: number, limit: number): Outlook {
  const firstWeek = (hasLeft: (day: number) => boolean): string | undefined => {
    for (let day = from; day <= from + AHEAD_YEARS * YEAR_DAYS; day += STEP_DAYS)
      if (hasLeft(day)) return isoOf(day).slice(0, 7);
    return undefined;
  };
  const reach = (day: number) => t * (nextError(fit, day) ?? 0);
  const earliest = firstWeek((day) => Math.abs(valueAt(fit, day)) + reach(day) > limit);
  const about = firstWeek((day) => Math.abs(valueAt(fit, day)) > limit);
  const latest = firstWeek((day) => Math.abs(valueAt(fit, day)) - reach(day) > limit);
  if (earliest === undefined) return { kind: 'stays', years: AHEAD_YEARS };
  return {
    kind: 'leaves',
    earliest,
    ...(about === undefined ? {} : { about }),
    ...(latest === undefined ? {} : { latest }),
  };
}
