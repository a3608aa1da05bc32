import type { Language } from '../../quantity/language.ts';
import { type FillingOf, fill } from '../catalogue.ts';
import type { MechanicsCatalogue, MechanicsKey } from './catalogue.ts';
import { english } from './english.ts';
import { french } from './french.ts';
import { german } from './german.ts';
import { spanish } from './spanish.ts';

const CATALOGUES: Readonly<Record<Language, MechanicsCatalogue>> = {
  en: english,
  de: german,
  fr: french,
  es: spanish,
};

/** All texts of a language. */
export const mechanicsCatalogue = (language: Language): MechanicsCatalogue => CATALOGUES[language];

/** Says a text about plots and mechanics in a language, its placeholders filled in. */
export const sayMechanics = <K extends MechanicsKey>(
  language: Language,
  key: K,
  ...params: FillingOf<(typeof english)[K]>
): string => fill(CATALOGUES[language][key], params[0] ?? {});
