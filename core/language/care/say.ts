import type { Language } from '../../quantity/language.ts';
import { type FillingOf, fill } from '../catalogue.ts';
import type { CareCatalogue, CareKey } from './catalogue.ts';
import { english } from './english.ts';
import { french } from './french.ts';
import { german } from './german.ts';
import { spanish } from './spanish.ts';

const CATALOGUES: Readonly<Record<Language, CareCatalogue>> = { en: english, de: german, fr: french, es: spanish };

/** All texts of a language. */
export const careCatalogue = (language: Language): CareCatalogue => CATALOGUES[language];

/** Says a text about the care of wrenches in a language, its placeholders filled in. */
export const sayCare = <K extends CareKey>(
  language: Language,
  key: K,
  ...params: FillingOf<(typeof english)[K]>
): string => fill(CATALOGUES[language][key], params[0] ?? {});
