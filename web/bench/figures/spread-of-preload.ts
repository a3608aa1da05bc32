import { bell, type Mark, type PlotPoint } from '@clampwright/core/plot';
import { z } from 'zod';
import { percent } from '../shown-figure.ts';
import type { BenchFigure } from './figure.ts';
import { forces, type Scribe } from './scribe.ts';

const outputSchema = z.object({
  preloadN: z.number(),
  standardUncertaintyN: z.number().positive(),
  probabilityBelowN: z.number().optional(),
  probabilityAboveN: z.number().optional(),
  monteCarlo: z
    .object({ histogram: z.object({ fromN: z.number(), toN: z.number(), counts: z.array(z.number()) }) })
    .optional(),
});

const inputSchema = z.object({ lowerPreloadN: z.number().optional(), upperPreloadN: z.number().optional() });

/** How the preload spreads from joint to joint; what lies outside of the window is hatched. */
export function spreadOfPreload(input: unknown, output: unknown, scribe: Scribe): readonly BenchFigure[] {
  const given = inputSchema.safeParse(input);
  const worked = outputSchema.safeParse(output);
  if (!given.success || !worked.success) return [];
  const { say, language } = scribe;
  const force = forces(scribe);
  const { preloadN, standardUncertaintyN, probabilityBelowN, probabilityAboveN, monteCarlo } = worked.data;
  const { lowerPreloadN: lowerN, upperPreloadN: upperN } = given.data;
  const cuts = [lowerN, upperN].filter((cut) => cut !== undefined);
  const points = monteCarlo ? outline(monteCarlo.histogram, cuts) : bell(preloadN, standardUncertaintyN, cuts);
  const shown = points.map(({ x, y }) => ({ x: force.of(x), y }));
  const figures = new Map([[say('target'), force.show(preloadN)]]);
  const marks: Mark[] = [
    {
      kind: 'band',
      name: say(monteCarlo ? 'drawn' : 'propagated'),
      points: shown.map(({ x, y }) => ({ x, low: 0, high: y })),
    },
  ];
  const part = (name: string, inside: (x: number) => boolean, share: number | undefined) => {
    const cut = points.filter(({ x }) => inside(x)).map(({ x, y }) => ({ x: force.of(x), low: 0, high: y }));
    marks.push({ kind: 'band', name, isHatched: true, points: cut });
    if (share !== undefined) figures.set(name, percent(share, language));
  };
  const limit = (name: string, at: number) => {
    marks.push({ kind: 'limit', name, along: 'x', at: force.of(at) });
    figures.set(name, force.show(at));
  };
  if (lowerN !== undefined) part(say('below'), (x) => x <= lowerN, probabilityBelowN);
  if (upperN !== undefined) part(say('above'), (x) => x >= upperN, probabilityAboveN);
  if (lowerN !== undefined) limit(say('lower'), lowerN);
  marks.push({ kind: 'limit', name: say('target'), along: 'x', at: force.of(preloadN) });
  if (upperN !== undefined) limit(say('upper'), upperN);
  return [
    {
      kind: 'plot',
      title: say('spread'),
      text: [...figures].map(([name, figure]) => `${name}: ${figure}`).join('; '),
      plot: {
        x: { label: `${say('preload')}, ${force.unit}` },
        y: { label: say('how-often'), from: 0, isBare: true },
        marks,
      },
      figures,
    },
  ];
}

interface Histogram {
  readonly fromN: number;
  readonly toN: number;
  readonly counts: readonly number[];
}

/** Steps of a histogram as a line; cut at the limits, so that a part of a bin can be hatched. */
function outline({ fromN, toN, counts }: Histogram, cuts: readonly number[]): readonly PlotPoint[] {
  const width = (toN - fromN) / Math.max(counts.length, 1);
  const most = Math.max(1, ...counts);
  return counts.flatMap((count, bin) => {
    const [left, right] = [fromN + bin * width, fromN + (bin + 1) * width];
    const inside = cuts.filter((cut) => cut > left && cut < right);
    return [left, ...inside, right].map((x) => ({ x, y: count / most }));
  });
}
