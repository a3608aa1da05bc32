import { sayMechanics } from '../language/mechanics/say.ts';
import type { Language } from '../quantity/language.ts';
import type { Verdict } from '../verdict/verdict.ts';
import { keyOf, type Plot } from './plot.ts';

/** A share or a margin under its name. */
export interface Part {
  readonly name: string;
  /** How long it is; shares of a whole are fractions of 1. */
  readonly share: number;
  /** As it is written, such as `38 %`. */
  readonly text: string;
  /** Further words, such as the clause of a check. */
  readonly note?: string;
  /** Told by shape, word and colour. */
  readonly verdict?: Verdict;
}

/** What is drawn of a result, before anybody knows how large the paper is. */
export type Picture =
  /** Over two axes. */
  | { readonly kind: 'plot'; readonly title: string; readonly plot: Plot }
  /** A whole and its parts on one bar. */
  | { readonly kind: 'shares'; readonly title: string; readonly parts: readonly Part[] }
  /** Bars under each other, up to `whole` (1 unless told); `limit` is marked across them and has its word. */
  | {
      readonly kind: 'bars';
      readonly title: string;
      readonly parts: readonly Part[];
      readonly whole?: number;
      readonly limit?: { readonly at: number; readonly text: string };
    };

/** What a picture says, in a sentence, for whoever does not see it. */
export function pictureInWords(picture: Picture, language: Language): string {
  const reads = (name: string, value: string) => sayMechanics(language, 'plot.reads', { name, value });
  const said =
    picture.kind === 'plot'
      ? keyOf(picture.plot.marks).flatMap(({ mark: { name, reads: value } }) =>
          value === undefined ? [] : [reads(name, value)],
        )
      : picture.parts.map(({ name, text }) => reads(name, text));
  return said.length === 0 ? picture.title : `${picture.title}. ${said.join('; ')}`;
}
