import { z } from 'zod';
import { sayCare } from '../language/care/say.ts';
import { sayMechanics } from '../language/mechanics/say.ts';
import { bell } from '../plot/density.ts';
import type { Picture } from '../plot/picture.ts';
import type { Mark } from '../plot/plot.ts';
import type { Language } from '../quantity/language.ts';
import { showNumber } from '../quantity/show-number.ts';
import { showShare } from '../quantity/show-quantity.ts';
import { conformityOf } from '../verdict/conformity.ts';
import type { Scribe } from './scribe.ts';

const limit = z.number().optional();

const valueSchema = z.object({
  value: z.number(),
  standardUncertainty: z.number().positive(),
  lower: limit,
  upper: limit,
});
const probabilitySchema = z.object({ probability: z.number() });

const processSchema = z.object({
  processMean: z.number(),
  processSd: z.number().positive(),
  standardUncertainty: z.number().positive(),
  lower: limit,
  upper: limit,
  acceptLower: limit,
  acceptUpper: limit,
});
const risksSchema = z.object({ falseAccept: z.number(), falseReject: z.number() });

const show = (value: number, language: Language): string => showNumber(Number(value.toPrecision(6)), language);

const edge = (name: string, at: number | undefined, language: Language): readonly Mark[] =>
  at === undefined ? [] : [{ kind: 'limit', name, reads: show(at, language), along: 'x', at }];

/** Where the true value behind a measured one lies; what is outside of the limits is hatched. */
export function valueAgainstLimits(
  input: unknown,
  output: unknown,
  { language }: Pick<Scribe, 'language'>,
): readonly Picture[] {
  const given = valueSchema.safeParse(input);
  const worked = probabilitySchema.safeParse(output);
  if (!given.success || !worked.success) return [];
  const { value, standardUncertainty, lower, upper } = given.data;
  const cuts = [lower, upper].filter((cut) => cut !== undefined);
  const points = bell(value, standardUncertainty, cuts);
  const band = (name: string, reads: string, isHatched: boolean, isIn: (x: number) => boolean): readonly Mark[] => {
    const part = points.filter(({ x }) => isIn(x)).map(({ x, y }) => ({ x, low: 0, high: y }));
    return part.length > 1 ? [{ kind: 'band', name, reads, isHatched, points: part }] : [];
  };
  const outside = sayCare(language, 'decision.outside');
  const chance = showShare(1 - worked.data.probability, language);
  return [
    {
      kind: 'plot',
      title: sayCare(language, 'decision.picture'),
      plot: {
        x: { label: sayCare(language, 'decision.value') },
        y: { label: sayMechanics(language, 'plot.how-often'), from: 0, isBare: true },
        marks: [
          ...band(sayCare(language, 'decision.true-value'), '', false, () => true),
          ...(lower === undefined ? [] : band(outside, chance, true, (x) => x <= lower)),
          ...(upper === undefined ? [] : band(outside, chance, true, (x) => x >= upper)),
          ...edge(sayMechanics(language, 'plot.lower'), lower, language),
          ...edge(sayCare(language, 'decision.measured'), value, language),
          ...edge(sayMechanics(language, 'plot.upper'), upper, language),
        ],
      },
    },
  ];
}

/** What a process makes, and which of it is accepted or rejected wrongly. */
export function decidedWrongly(
  input: unknown,
  output: unknown,
  { language }: Pick<Scribe, 'language'>,
): readonly Picture[] {
  const given = processSchema.safeParse(input);
  const risks = risksSchema.safeParse(output);
  if (!given.success || !risks.success) return [];
  const { processMean, processSd, standardUncertainty, lower, upper } = given.data;
  const accepted = { lower: given.data.acceptLower ?? lower, upper: given.data.acceptUpper ?? upper };
  const cuts = [lower, upper, accepted.lower, accepted.upper].filter((cut) => cut !== undefined);
  const made = bell(processMean, processSd, cuts);
  const taken = (x: number) => conformityOf(x, standardUncertainty, accepted).inside;
  const [from, to] = [lower ?? Number.NEGATIVE_INFINITY, upper ?? Number.POSITIVE_INFINITY];
  const part = (
    name: string,
    reads: string,
    isIn: (x: number) => boolean,
    share: (x: number) => number,
  ): readonly Mark[] => {
    const points = made.filter(({ x }) => isIn(x)).map(({ x, y }) => ({ x, low: 0, high: y * share(x) }));
    return points.length > 1 ? [{ kind: 'band', name, reads, isHatched: true, points }] : [];
  };
  const { falseAccept, falseReject } = risks.data;
  const acceptedWrongly = sayCare(language, 'decision.accepted-wrongly');
  return [
    {
      kind: 'plot',
      title: sayCare(language, 'decision.risk-picture'),
      plot: {
        x: { label: sayCare(language, 'decision.value') },
        y: { label: sayMechanics(language, 'plot.how-often'), from: 0, isBare: true },
        marks: [
          { kind: 'line', name: sayCare(language, 'decision.process'), points: made },
          ...part(acceptedWrongly, showShare(falseAccept, language), (x) => x <= from, taken),
          ...part(acceptedWrongly, showShare(falseAccept, language), (x) => x >= to, taken),
          ...part(
            sayCare(language, 'decision.rejected-wrongly'),
            showShare(falseReject, language),
            (x) => x >= from && x <= to,
            (x) => 1 - taken(x),
          ),
          ...edge(sayMechanics(language, 'plot.lower'), lower, language),
          ...edge(sayCare(language, 'decision.accept-lower'), given.data.acceptLower, language),
          ...edge(sayCare(language, 'decision.accept-upper'), given.data.acceptUpper, language),
          ...edge(sayMechanics(language, 'plot.upper'), upper, language),
        ],
      },
    },
  ];
}
