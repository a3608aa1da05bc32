import type { Mark, Plot } from '@clampwright/core/plot';
import { controlChart } from '@clampwright/core/statistics';

export interface CheckWords {
  readonly number: string;
  readonly deviation: string;
  readonly each: string;
  readonly mean: string;
  readonly control: string;
  readonly signal: string;
}

/** Fewer say nothing of how a wrench scatters. */
const LEAST = 5;
/** The first checks give the limits, so that a wrench that goes astray does not draw its own. */
const BASELINE = 12;

/**
 * Checks before use as a chart of individuals.
 *
 * @param deviations percent, in the order of time
 * @returns undefined for fewer than five; `signals` counts the checks that a rule speaks against
 */
export function checkChart(
  deviations: readonly number[],
  words: CheckWords,
): { readonly plot: Plot; readonly signals: number } | undefined {
  if (deviations.length < LEAST) return undefined;
  const { center, lower, upper, signals } = controlChart(deviations, Math.min(BASELINE, deviations.length));
  const points = deviations.map((y, index) => ({ x: index + 1, y }));
  const standing = new Set(signals.map(({ last }) => last));
  const marked = points.filter(({ x }) => standing.has(x));
  const marks: Mark[] = [
    { kind: 'window', name: words.control, along: 'y', from: lower, to: upper },
    {
      kind: 'line',
      name: words.mean,
      isDashed: true,
      points: [
        { x: 1, y: center },
        { x: deviations.length, y: center },
      ],
    },
    { kind: 'line', name: words.each, points },
    { kind: 'points', name: words.each, sign: 'dot', points },
    ...(marked.length > 0 ? [{ kind: 'points', name: words.signal, sign: 'cross', points: marked } as const] : []),
  ];
  const plot: Plot = {
    x: { label: words.number, from: 1, to: deviations.length },
    y: { label: words.deviation },
    marks,
  };
  return { plot, signals: marked.length };
}
