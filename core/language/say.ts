import type { Language } from '../quantity/language.ts';
import { type Catalogue, type Filling, fill, type Key } from './catalogue.ts';
import { english } from './english.ts';
import { french } from './french.ts';
import { german } from './german.ts';
import { spanish } from './spanish.ts';

const CATALOGUES: Readonly<Record<Language, Catalogue>> = { en: english, de: german, fr: french, es: spanish };

/** All texts of a language. */
export const catalogue = (language: Language): Catalogue => CATALOGUES[language];

/**
 * Says a text of the catalogue in a language.
 *
 * @param params what its placeholders stand for; the compiler wants exactly the English text's
 */
export const say = <K extends Key>(language: Language, key: K, ...params: Filling<K>): string =>
  fill(CATALOGUES[language][key], params[0] ?? {});
