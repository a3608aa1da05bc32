import { z } from 'zod';
import type { Observation } from '../../statistics/censored-fit.ts';

const days = (what: string) => z.number().positive().max(36_500).describe(`${what}, days`);
const pulls = (what: string) => z.number().positive().max(1e8).describe(`${what}, pulls`);
const percent = (what: string) => z.number().min(-100).max(100).describe(`${what}, percent`);

/** One calibration: how long and how hard the wrench was used since the last one, and how it was found. */
export const foundSchema = z.strictObject({
  days: days('days since the calibration before'),
  pulls: pulls('pulls since the calibration before').optional(),
  found: z.enum(['in', 'out']).describe('how the wrench was found, before it was adjusted'),
  goodAtDays: days('day of the last check between that was still good').optional(),
  goodAtPulls: pulls('pull of the last check between that was still good').optional(),
  foundPercent: percent('deviation found, for the control chart').optional(),
  leftPercent: percent('deviation left by the calibration before, for the control chart; 0 when left out').optional(),
  howMany: z
    .number()
    .int()
    .min(1)
    .max(1_000_000)
    .describe('how many calibrations like this; 1 when left out')
    .optional(),
});
export type Found = z.infer<typeof foundSchema>;

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
