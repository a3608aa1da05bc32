import { z } from 'zod';
import { CHECKS } from '../joint/margins/margin.ts';
import { sayMechanics } from '../language/mechanics/say.ts';
import { sayCitation } from '../language/mechanics/say-citation.ts';
import type { Part, Picture } from '../plot/picture.ts';
import { showNumber } from '../quantity/show-number.ts';
import type { Scribe } from './scribe.ts';

const outputSchema = z.object({
  margins: z
    .array(
      z.object({
        check: z.enum(CHECKS),
        actual: z.number(),
        allowed: z.number(),
        unit: z.string(),
        ratio: z.number(),
        needed: z.number().positive(),
        holds: z.boolean(),
        clause: z.string(),
      }),
    )
    .min(1),
});
type Margin = z.infer<typeof outputSchema>['margins'][number];

/** A bar reaches its end at so many times what is asked for; more of it tells nothing more. */
const WHOLE = 2;
const DIGITS = 3;

/** What a joint bears over what it is exposed to, the worst first, against what is asked for. */
export function margins(output: unknown, scribe: Scribe): readonly Picture[] {
  const read = outputSchema.safeParse(output);
  if (!read.success) return [];
  const { language } = scribe;
  const worstFirst = read.data.margins.toSorted((a, b) => a.ratio / a.needed - b.ratio / b.needed);
  return [
    {
      kind: 'bars',
      title: sayMechanics(language, 'plot.margins'),
      whole: WHOLE,
      limit: { at: 1, text: sayMechanics(language, 'plot.asked-for') },
      parts: worstFirst.map((margin) => partOf(margin, scribe)),
    },
  ];
}

function partOf(margin: Margin, { value, language }: Scribe): Part {
  const { check, actual, allowed, unit, ratio, needed, holds, clause } = margin;
  const figure = (size: number) => showNumber(Number(size.toPrecision(4)), language);
  const actualShown = `${figure(actual)}\u00a0${unit}`.trim();
  const allowedShown = `${figure(allowed)}\u00a0${unit}`.trim();
  const shownAt = { actual: actualShown, allowed: allowedShown, clause: sayCitation(clause, language) };
  const note = sayMechanics(language, 'plot.margin-note', shownAt);
  const shown = { ratio: showNumber(roundedDown(ratio), language), needed: showNumber(needed, language) };
  return {
    name: value(check),
    share: ratio / needed,
    text: actual <= 0 && holds ? sayMechanics(language, 'plot.margin-free') : sayMargin(holds, shown, language),
    note,
    verdict: holds ? 'within' : 'over',
  };
}

const sayMargin = (
  holds: boolean,
  figures: { readonly ratio: string; readonly needed: string },
  language: Scribe['language'],
): string => sayMechanics(language, holds ? 'plot.margin-holds' : 'plot.margin-fails', figures);

/** Never rounded up to what is asked for. */
function roundedDown(ratio: number): number {
  const step = 10 ** (Math.floor(Math.log10(Math.max(ratio, 1e-9))) - DIGITS + 1);
  return Number((Math.floor(ratio / step + 1e-9) * step).toPrecision(DIGITS));
}
