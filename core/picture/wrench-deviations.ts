import { z } from 'zod';
import { sayCare } from '../language/care/say.ts';
import { sayMechanics } from '../language/mechanics/say.ts';
import type { Picture } from '../plot/picture.ts';
import type { Language } from '../quantity/language.ts';
import { showNumber } from '../quantity/show-number.ts';
import { type Scribe, torques } from './scribe.ts';

const outputSchema = z.object({
  permissibleDeviationPercent: z.number(),
  points: z.array(
    z.object({
      targetNm: z.number(),
      deviationsPercent: z.array(z.number()).readonly(),
      meanDeviationPercent: z.number(),
      expandedUncertaintyPercent: z.number(),
    }),
  ),
});

/** Deviations of a wrench over torque, each mean with its uncertainty, against what is permissible. */
export function wrenchDeviations(output: unknown, scribe: Pick<Scribe, 'language' | 'units'>): readonly Picture[] {
  const read = outputSchema.safeParse(output);
  if (!read.success) return [];
  const { permissibleDeviationPercent: limit, points } = read.data;
  const { language } = scribe;
  const torque = torques(scribe);
  return [
    {
      kind: 'plot',
      title: sayCare(language, 'certificate.picture'),
      plot: {
        x: { label: `${sayMechanics(language, 'plot.torque')}, ${torque.unit}`, from: 0 },
        y: { label: `${sayCare(language, 'certificate.deviation')}, %` },
        marks: [
          {
            kind: 'window',
            name: sayCare(language, 'certificate.permissible'),
            reads: `±\u00a0${showNumber(limit, language)}\u00a0%`,
            along: 'y',
            from: -limit,
            to: limit,
          },
          {
            kind: 'points',
            name: sayCare(language, 'certificate.single'),
            sign: 'ring',
            points: points.flatMap(({ targetNm, deviationsPercent }) =>
              deviationsPercent.map((y) => ({ x: torque.of(targetNm), y })),
            ),
          },
          {
            kind: 'points',
            name: sayCare(language, 'certificate.deviation'),
            reads: points
              .map((point) => reading(point.meanDeviationPercent, point.expandedUncertaintyPercent, language))
              .join('; '),
            sign: 'dot',
            points: points.map(({ targetNm, meanDeviationPercent: y, expandedUncertaintyPercent: W }) => ({
              x: torque.of(targetNm),
              y,
              low: y - W,
              high: y + W,
            })),
          },
        ],
      },
    },
  ];
}

const reading = (mean: number, expanded: number, language: Language): string =>
  `${showNumber(mean, language, { decimals: 2 })} ±\u00a0${showNumber(expanded, language, { decimals: 2 })}\u00a0%`;
