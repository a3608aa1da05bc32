import { studentT } from '../statistics/distributions/student-t.ts';
import { crossingOf, linearTrend, type Trend, trendAt } from '../statistics/linear-trend.ts';

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
  | { readonly kind: 'leaves'; readonly about?: string; readonly earliest: string };

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
const LEVEL = 0.95;

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
  const none = { history: since, slopePercentPerYear: undefined, slopeHalfWidth: undefined, isTrend: false, band: [] };
  if (last && Math.abs(last.deviationPercent) > limitPercent) return { ...none, outlook: { kind: 'out-already' } };
  const trend = linearTrend(since.map(({ on, deviationPercent }) => ({ x: dayOf(on), y: deviationPercent })));
  if (!trend || !first || !last) return { ...none, outlook: { kind: 'too-few', count: since.length } };
  const half = studentT(trend.degrees).quantileAbove(0.025) * trend.slopeStandardError;
  return {
    history: since,
    slopePercentPerYear: trend.slope * YEAR_DAYS,
    slopeHalfWidth: half * YEAR_DAYS,
    isTrend: Math.abs(trend.slope) > half,
    outlook: outlookOf(trend, dayOf(last.on), limitPercent),
    band: bandOf(trend, dayOf(first.on), dayOf(last.on) + YEAR_DAYS),
  };
}

const dayOf = (on: string): number => Date.parse(on.slice(0, 10)) / DAY_MS;
const isoOf = (day: number): string => new Date(day * DAY_MS).toISOString().slice(0, 10);

const BAND_STEPS = 24;

const bandOf = (trend: Trend, from: number, to: number): Drift['band'] =>
  Array.from({ length: BAND_STEPS + 1 }, (_, step) => {
    const day = from + ((to - from) * step) / BAND_STEPS;
    const {
      value,
      prediction: [low, high],
    } = trendAt(trend, day, LEVEL);
    return { on: isoOf(day), value, low, high };
  });

/** The earlier of what reaches the upper limit and what reaches the lower one. */
function outlookOf(trend: Trend, from: number, limit: number): Outlook {
  const until = from + AHEAD_YEARS * YEAR_DAYS;
  const crossings = [limit, -limit].map((side) => crossingOf(trend, side, from, LEVEL));
  const soonest = (days: readonly (number | undefined)[]) => {
    const ahead = days.filter((day) => day !== undefined && day <= until);
    return ahead.length === 0 ? undefined : isoOf(Math.min(...ahead.map(Number))).slice(0, 7);
  };
  const [low, high] = trendAt(trend, from, LEVEL).prediction;
  const isWideAlready = low < -limit || high > limit;
  const earliest = isWideAlready ? isoOf(from).slice(0, 7) : soonest(crossings.map((crossing) => crossing.earliest));
  const about = soonest(crossings.map(({ at }) => at));
  if (earliest === undefined) return { kind: 'stays', years: AHEAD_YEARS };
  return { kind: 'leaves', earliest, ...(about === undefined ? {} : { about }) };
}
