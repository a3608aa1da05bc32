import type { Observation } from '../../statistics/censored-fit.ts';

/** One calibration: how long and how hard the wrench was used since the last one, and how it was found. */
export interface Found {
  readonly days: number;
  readonly pulls?: number | undefined;
  readonly found: 'in' | 'out';
  /** The last day, and pull, at which a check between the calibrations was still good. */
  readonly goodAtDays?: number | undefined;
  readonly goodAtPulls?: number | undefined;
  /** Deviation found, and the one left by the calibration before, percent. */
  readonly foundPercent?: number | undefined;
  readonly leftPercent?: number | undefined;
  /** How many like this. */
  readonly howMany?: number | undefined;
}

export const CLOCKS = ['days', 'pulls'] as const;
/** What the interval is counted in. */
export type Clock = (typeof CLOCKS)[number];

/** What a history says of when the wrench leaves its limits; undefined unless every calibration tells this clock. */
export function observationsOf(history: readonly Found[], clock: Clock): readonly Observation[] | undefined {
  const observations = history.flatMap((one) => {
    const time = one[clock];
    if (time === undefined) return [];
    const good = (clock === 'days' ? one.goodAtDays : one.goodAtPulls) ?? 0;
    return [
      one.found === 'in'
        ? { from: time, to: Infinity, count: one.howMany }
        : { from: good, to: time, count: one.howMany },
    ];
  });
  return observations.length === history.length ? observations : undefined;
}

const sum = (history: readonly Found[], part: (one: Found) => number): number =>
  history.reduce((total, one) => total + (one.howMany ?? 1) * part(one), 0);

export const countOf = (history: readonly Found[], found: Found['found']): number =>
  sum(history, (one) => (one.found === found ? 1 : 0));

/** Pulls a day over those calibrations that tell them; undefined when none does. */
export function pullsPerDay(history: readonly Found[]): number | undefined {
  const telling = history.filter(({ pulls }) => pulls !== undefined);
  return telling.length === 0 ? undefined : sum(telling, ({ pulls = 0 }) => pulls) / sum(telling, ({ days }) => days);
}
