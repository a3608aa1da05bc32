import { controlChartPicture } from '@clampwright/core/picture';
import type { Picture } from '@clampwright/core/plot';
import type { Language } from '@clampwright/core/quantity';
import { controlChart } from '@clampwright/core/statistics';

/** Fewer say nothing of how a wrench scatters. */
const LEAST = 5;
/** The first checks give the limits, so that a wrench that goes astray does not draw its own. */
const BASELINE = 12;

/**
 * Checks before use as a chart of individuals.
 *
 * @param deviations percent, in the order of time
 * @param label      what they are, in words
 * @returns undefined for fewer than five; `signals` counts the checks that a rule speaks against
 */
export function checkChart(
  deviations: readonly number[],
  language: Language,
  label: string,
): { readonly pictures: readonly Picture[]; readonly signals: number } | undefined {
  if (deviations.length < LEAST) return undefined;
  const chart = controlChart(deviations, Math.min(BASELINE, deviations.length));
  return {
    pictures: controlChartPicture({ values: deviations }, chart, { language }, label),
    signals: new Set(chart.signals.map(({ last }) => last)).size,
  };
}
