import type { Language } from './language.ts';

/** A formula with its numbers, which is written with a decimal point, in the language's own sign. */
export const formulaIn = (formula: string, language: Language): string =>
  language === 'en' ? formula : formula.replaceAll(', ', '; ').replace(/(\d)\.(\d)/g, '$1,$2');
