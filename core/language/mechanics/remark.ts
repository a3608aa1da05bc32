import { z } from 'zod';
import type { Language } from '../../quantity/language.ts';
import { showNumber } from '../../quantity/show-number.ts';
import { type FillingOf, fill } from '../catalogue.ts';
import { english } from './english.ts';

/** A sentence that a calculation gives: a code and its figures for whoever says it in another language, and plain English. */
export const remarkSchema = z.strictObject({
  code: z.string().describe('what is said, such as nut-thin; stays the same whatever the words'),
  figures: z
    .record(z.string(), z.union([z.number(), z.string()]))
    .describe('what the sentence is filled in with; units in the names'),
  message: z.string().describe('the same in English'),
});
export type Remark = z.infer<typeof remarkSchema>;

type Coded<Key> = Key extends `remark.${infer Code}` ? Code : never;
export type RemarkCode = Coded<keyof typeof english>;

/**
 * Makes a remark; the compiler wants exactly the figures that its English text has places for.
 *
 * @param filling numbers unrounded; they are rounded where they are said
 */
export function remark<Code extends RemarkCode>(
  code: Code,
  ...filling: FillingOf<(typeof english)[`remark.${Code}`]>
): Remark {
  const figures = filling[0] ?? {};
  return {
    code,
    figures,
    message: fill(
      english[`remark.${code}`],
      shownFigures(figures, 'en', (word) => word),
    ),
  };
}

type Figures = Remark['figures'];

/** Figures as they are read, by the unit that ends their name; `wordOf` says a word in the language. */
export const shownFigures = (
  figures: Figures,
  language: Language,
  wordOf: (word: string) => string,
): Readonly<Record<string, string>> =>
  Object.fromEntries(
    Object.entries(figures).map(([name, value]) => [
      name,
      typeof value === 'string' ? wordOf(value) : shownFigure(name, value, language),
    ]),
  );

const NO_BREAK_SPACE = '\u00a0';

/** The unit in the name, what is shown instead, how many of it make one shown, and digits that mean something. */
const UNITS = [
  { ends: 'N', shown: 'kN', per: 1000, digits: 3 },
  { ends: 'Nm', shown: 'N·m', per: 1, digits: 8 },
  { ends: 'Mm', shown: 'mm', per: 1, digits: 8 },
  { ends: 'Um', shown: 'µm', per: 1, digits: 4 },
  { ends: 'Share', shown: '%', per: 0.01, digits: 3 },
] as const;

function shownFigure(name: string, value: number, language: Language): string {
  const row = UNITS.find(({ ends }) => name.endsWith(ends));
  if (!row) return showNumber(value, language);
  const figure = Number((value / row.per).toPrecision(row.digits));
  return `${showNumber(figure, language)}${NO_BREAK_SPACE}${row.shown}`;
}
