import { z } from 'zod';
import { sayMechanics } from '../language/mechanics/say.ts';
import type { Picture } from '../plot/picture.ts';
import type { Mark, Sign } from '../plot/plot.ts';
import { type Scribe, shortFigure } from './scribe.ts';

const inputSchema = z.object({ values: z.array(z.number()).min(2) });

const outputSchema = z.object({
  center: z.number(),
  lower: z.number(),
  upper: z.number(),
  sigma: z.number(),
  signals: z.array(z.object({ first: z.number(), last: z.number() })),
});

/** More values than this and only a line is drawn, with the signals on it. */
const MOST_DOTS = 200;

/**
 * Values in their order between the limits of the chart; those that complete a signal carry a cross.
 *
 * @param value what the values are, with their unit; left out where nobody knows
 */
export function controlChartPicture(
  input: unknown,
  output: unknown,
  { language }: Pick<Scribe, 'language'>,
  value = sayMechanics(language, 'plot.value'),
): readonly Picture[] {
  const given = inputSchema.safeParse(input);
  const worked = outputSchema.safeParse(output);
  if (!given.success || !worked.success) return [];
  const { values } = given.data;
  const { center, lower, upper, signals } = worked.data;
  const points = values.map((y, index) => ({ x: index + 1, y }));
  const ending = new Set(signals.map(({ last }) => last));
  const dots = (word: 'signal' | 'steady', sign: Sign, isDrawn: (x: number) => boolean): readonly Mark[] => {
    const drawn = points.filter(({ x }) => isDrawn(x));
    return drawn.length === 0
      ? []
      : [
          {
            kind: 'points',
            name: sayMechanics(language, `plot.${word}`),
            sign,
            points: drawn,
            reads: String(drawn.length),
          },
        ];
  };
  const limit = (word: 'chart-lower' | 'center' | 'chart-upper', at: number): Mark => ({
    kind: 'limit',
    name: sayMechanics(language, `plot.${word}`),
    along: 'y',
    at,
    reads: shortFigure(at, language),
  });
  const marks: readonly Mark[] = [
    { kind: 'line', name: sayMechanics(language, 'plot.values'), points },
    ...(values.length > MOST_DOTS ? [] : dots('steady', 'dot', (x) => !ending.has(x))),
    ...dots('signal', 'cross', (x) => ending.has(x)),
    limit('chart-upper', upper),
    limit('center', center),
    limit('chart-lower', lower),
  ];
  return [
    {
      kind: 'plot',
      title: sayMechanics(language, 'plot.chart'),
      plot: {
        x: { label: sayMechanics(language, 'plot.value-number'), from: 0, to: values.length + 1 },
        y: { label: value },
        marks,
      },
    },
  ];
}
