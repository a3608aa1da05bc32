import { z } from 'zod';
import { sayMechanics } from '../language/mechanics/say.ts';
import { bell } from '../plot/density.ts';
import type { Picture } from '../plot/picture.ts';
import type { Mark } from '../plot/plot.ts';
import { type Scribe, shortFigure } from './scribe.ts';

const outputSchema = z.object({
  n: z.number(),
  mean: z.number(),
  sd: z.number().positive(),
  cpk: z.number(),
  histogram: z.object({ start: z.number(), end: z.number(), counts: z.array(z.number()).min(1) }),
});

const inputSchema = z.object({ lower: z.number().optional(), upper: z.number().optional() });

/**
 * A histogram between the limits, with the bell that a normal process would have.
 *
 * @param value what the values are, with their unit; left out where nobody knows
 */
export function capabilityPicture(
  input: unknown,
  output: unknown,
  { language }: Pick<Scribe, 'language'>,
  value = sayMechanics(language, 'plot.value'),
): readonly Picture[] {
  const given = inputSchema.safeParse(input);
  const worked = outputSchema.safeParse(output);
  if (!given.success || !worked.success) return [];
  const { n, mean, sd, histogram } = worked.data;
  const { start, end, counts } = histogram;
  const width = (end - start) / counts.length;
  const heightOfBell = (n * width) / (sd * Math.sqrt(2 * Math.PI));
  const limit = (word: 'lower' | 'upper', at: number | undefined): readonly Mark[] =>
    at === undefined
      ? []
      : [
          {
            kind: 'limit',
            name: sayMechanics(language, `plot.${word}`),
            along: 'x',
            at,
            reads: shortFigure(at, language),
          },
        ];
  const marks: readonly Mark[] = [
    {
      kind: 'band',
      name: sayMechanics(language, 'plot.values'),
      reads: String(n),
      points: counts.flatMap((high, bin) =>
        [start + bin * width, start + (bin + 1) * width].map((x) => ({ x, low: 0, high })),
      ),
    },
    {
      kind: 'line',
      name: sayMechanics(language, 'plot.bell'),
      points: bell(mean, sd).map(({ x, y }) => ({ x, y: heightOfBell * y })),
    },
    ...limit('lower', given.data.lower),
    {
      kind: 'limit',
      name: sayMechanics(language, 'plot.mean'),
      along: 'x',
      at: mean,
      reads: shortFigure(mean, language),
    },
    ...limit('upper', given.data.upper),
  ];
  return [
    {
      kind: 'plot',
      title: sayMechanics(language, 'plot.capability'),
      plot: {
        x: { label: value },
        y: { label: sayMechanics(language, 'plot.how-often'), from: 0 },
        marks,
      },
    },
  ];
}
