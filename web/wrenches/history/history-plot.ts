import type { Mark, Plot } from '@clampwright/core/plot';
import type { Drift } from '@clampwright/core/wrench';
import type { HistoryAt } from './histories.ts';

/** Words of the plot, in the language on screen. */
export interface HistoryWords {
  readonly year: string;
  readonly deviation: string;
  readonly limits: string;
  /** The limits themselves, such as ± 4 %. */
  readonly limitsRead: string;
  readonly found: string;
  readonly left: string;
  readonly trend: string;
  readonly band: string;
}

const YEAR_MS = 365.25 * 86_400_000;

/** A day on the axis, in years, so that two calibrations a year apart lie one unit apart. */
const yearOf = (on: string): number => 1970 + Date.parse(`${on.slice(0, 10)}T00:00:00Z`) / YEAR_MS;

/** Deviations over time with their uncertainty against the limits, and where the trend leads. */
export function historyPlot({ deviations }: HistoryAt, drift: Drift, limitPercent: number, words: HistoryWords): Plot {
  const points = (isAdjusted: boolean) =>
    deviations
      .filter((one) => one.isAdjusted === isAdjusted)
      .map(({ on, deviationPercent: y, expandedUncertaintyPercent: reach }) => ({
        x: yearOf(on),
        y,
        low: y - reach,
        high: y + reach,
      }));
  const left = points(true);
  const years = [...deviations.map(({ on }) => yearOf(on)), ...drift.band.map(({ on }) => yearOf(on))];
  const [from, to] = [Math.floor(Math.min(...years)), Math.ceil(Math.max(...years) + 0.01)];
  const marks: Mark[] = [
    {
      kind: 'window',
      name: words.limits,
      reads: words.limitsRead,
      along: 'y',
      from: -limitPercent,
      to: limitPercent,
    },
    ...trendMarks(drift, words),
    { kind: 'points', name: words.found, sign: 'dot', points: points(false) },
    ...(left.length > 0 ? [{ kind: 'points', name: words.left, sign: 'ring', points: left } as const] : []),
  ];
  return {
    x: {
      label: words.year,
      from,
      to,
      ticks: Array.from({ length: to - from + 1 }, (_, n) => ({ at: from + n, text: String(from + n) })),
    },
    y: { label: words.deviation },
    marks,
  };
}

function trendMarks({ band }: Drift, words: HistoryWords): readonly Mark[] {
  if (band.length === 0) return [];
  return [
    {
      kind: 'band',
      name: words.band,
      points: band.map(({ on, low, high }) => ({ x: yearOf(on), low, high })),
    },
    {
      kind: 'line',
      name: words.trend,
      isDashed: true,
      points: band.map(({ on, value }) => ({ x: yearOf(on), y: value })),
    },
  ];
}
