import { z } from 'zod';
import { sayMechanics } from '../language/mechanics/say.ts';
import { bell } from '../plot/density.ts';
import type { Picture } from '../plot/picture.ts';
import type { Mark, PlotPoint } from '../plot/plot.ts';
import { showShare } from '../quantity/show-quantity.ts';
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
type Worked = z.infer<typeof outputSchema>;

const inputSchema = z.object({ lowerPreloadN: z.number().optional(), upperPreloadN: z.number().optional() });

/** How the preload spreads from joint to joint; what lies outside of the window is hatched. */
export function spreadOfPreload(input: unknown, output: unknown, scribe: Scribe): readonly Picture[] {
  const given = inputSchema.safeParse(input);
  const worked = outputSchema.safeParse(output);
  if (!given.success || !worked.success) return [];
  const { language } = scribe;
  const { unit } = forces(scribe);
  return [
    {
      kind: 'plot',
      title: sayMechanics(language, 'plot.spread'),
      plot: {
        x: { label: `${sayMechanics(language, 'plot.preload')}, ${unit}` },
        y: { label: sayMechanics(language, 'plot.how-often'), from: 0, isBare: true },
        marks: marksOf(worked.data, given.data.lowerPreloadN, given.data.upperPreloadN, scribe),
      },
    },
  ];
}

function marksOf(
  { preloadN, standardUncertaintyN, probabilityBelowN, probabilityAboveN, monteCarlo }: Worked,
  lowerN: number | undefined,
  upperN: number | undefined,
  scribe: Scribe,
): readonly Mark[] {
  const { language } = scribe;
  const force = forces(scribe);
  const cuts = [lowerN, upperN].filter((cut) => cut !== undefined);
  const points = monteCarlo ? outline(monteCarlo.histogram, cuts) : bell(preloadN, standardUncertaintyN, cuts);
  const area = (inside: (x: number) => boolean) =>
    points.filter(({ x }) => inside(x)).map(({ x, y }) => ({ x: force.of(x), low: 0, high: y }));
  const outside = (name: string, share: number | undefined, inside: (x: number) => boolean): Mark => ({
    kind: 'band',
    name,
    isHatched: true,
    points: area(inside),
    ...(share === undefined ? {} : { reads: showShare(share, language) }),
  });
  const limit = (name: string, at: number): Mark => ({
    kind: 'limit',
    name,
    along: 'x',
    at: force.of(at),
    reads: force.show(at),
  });
  return [
    {
      kind: 'band',
      name: sayMechanics(language, monteCarlo ? 'plot.drawn' : 'plot.propagated'),
      points: area(() => true),
    },
    ...(lowerN === undefined
      ? []
      : [outside(sayMechanics(language, 'plot.below'), probabilityBelowN, (x) => x <= lowerN)]),
    ...(upperN === undefined
      ? []
      : [outside(sayMechanics(language, 'plot.above'), probabilityAboveN, (x) => x >= upperN)]),
    ...(lowerN === undefined ? [] : [limit(sayMechanics(language, 'plot.lower'), lowerN)]),
    limit(sayMechanics(language, 'plot.target'), preloadN),
    ...(upperN === undefined ? [] : [limit(sayMechanics(language, 'plot.upper'), upperN)]),
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
