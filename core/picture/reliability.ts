import { z } from 'zod';
import { sayMechanics } from '../language/mechanics/say.ts';
import type { Picture } from '../plot/picture.ts';
import type { Mark } from '../plot/plot.ts';
import { showShare } from '../quantity/show-quantity.ts';
import { type Scribe, shortFigure } from './scribe.ts';

const inputSchema = z.object({ wantedShare: z.number().default(0.95) });

const outputSchema = z.object({
  curve: z.array(z.object({ time: z.number(), share: z.number() })).min(2),
  intervalDays: z.number(),
  lowerDays: z.number().optional(),
  upperDays: z.number().optional(),
});

/** Share of wrenches still inside their limits over the days, the share wanted, and where both meet. */
export function reliabilityPicture(input: unknown, output: unknown, { language }: Scribe): readonly Picture[] {
  const given = inputSchema.safeParse(input);
  const worked = outputSchema.safeParse(output);
  if (!given.success || !worked.success) return [];
  const { wantedShare } = given.data;
  const { curve, intervalDays, lowerDays, upperDays } = worked.data;
  const last = curve.at(-1)?.time ?? 0;
  const days = (at: number) => shortFigure(at, language);
  const range: readonly Mark[] =
    lowerDays === undefined || upperDays === undefined
      ? []
      : [
          {
            kind: 'window',
            name: sayMechanics(language, 'plot.interval-range'),
            along: 'x',
            from: lowerDays,
            to: Math.min(upperDays, last),
            reads: `${days(lowerDays)} – ${days(upperDays)}`,
          },
        ];
  const marks: readonly Mark[] = [
    ...range,
    {
      kind: 'line',
      name: sayMechanics(language, 'plot.model'),
      points: curve.map(({ time, share }) => ({ x: time, y: 100 * share })),
    },
    {
      kind: 'limit',
      name: sayMechanics(language, 'plot.wanted'),
      along: 'y',
      at: 100 * wantedShare,
      reads: showShare(wantedShare, language),
    },
    {
      kind: 'limit',
      name: sayMechanics(language, 'plot.next-interval'),
      along: 'x',
      at: intervalDays,
      reads: days(intervalDays),
    },
  ];
  return [
    {
      kind: 'plot',
      title: sayMechanics(language, 'plot.reliability'),
      plot: {
        x: { label: sayMechanics(language, 'plot.days'), from: 0 },
        y: { label: sayMechanics(language, 'plot.share-percent'), from: 0, to: 100 },
        marks,
      },
    },
  ];
}
