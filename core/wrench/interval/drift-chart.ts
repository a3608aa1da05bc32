import { controlChart, type Signal } from '../../statistics/control-chart.ts';
import { describe } from '../../statistics/describe.ts';
import { studentT } from '../../statistics/distributions/student-t.ts';
import type { Found } from './history.ts';

/** What the chart of drifts says. */
export interface DriftChart {
  /** Percent a day. */
  readonly meanDrift: number;
  readonly driftSd: number;
  /** When the next drift, by its prediction interval, has used up the room to the limit. */
  readonly intervalDays: number;
  readonly signals: readonly Signal[];
}

/**
 * Interval from drift and its scatter: each calibration gives one drift, the deviation found less the one left before,
 * over the days between. The next drift lies within mean ± t·s·√(1 + 1/n).
 *
 * @param history      at least three calibrations with a deviation found
 * @param limitPercent permissible deviation, either way
 * @param share        that is to be found in
 * @source ILAC-G24:2007 / OIML D 10, method 2: control chart; prediction interval of NIST/SEMATECH e-Handbook
 */
export function driftChart(history: readonly Found[], limitPercent: number, share: number): DriftChart {
  const drifts = history.map(({ foundPercent = 0, leftPercent = 0, days }) => (foundPercent - leftPercent) / days);
  const { count, mean, standardDeviation: sd = 0 } = describe(drifts);
  const left = history.at(-1)?.leftPercent ?? 0;
  const reach = studentT(count - 1).quantile((1 + share) / 2) * sd * Math.sqrt(1 + 1 / count);
  const room = [
    { way: mean + reach, percent: limitPercent - left },
    { way: reach - mean, percent: limitPercent + left },
  ];
  const days = room.map(({ way, percent }) => (way > 0 ? Math.max(percent, 0) / way : Infinity));
  return { meanDrift: mean, driftSd: sd, intervalDays: Math.min(...days), signals: controlChart(drifts).signals };
}
