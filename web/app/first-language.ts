import { LANGUAGES, type Language } from '@clampwright/core/quantity';

const known = (tag: string) => LANGUAGES.find((language) => tag.toLowerCase().split('-')[0] === language);

/**
 * The language to begin with: the one kept at this device, else the first that the browser wants and we have.
 *
 * @param kept   what was chosen before, if anything
 * @param wanted language tags in the browser's order, such as `de-CH`
 */
export function firstLanguage(kept: string | null, wanted: readonly string[]): Language {
  return known(kept ?? '') ?? wanted.map(known).find((language) => language !== undefined) ?? 'en';
}
