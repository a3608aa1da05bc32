import type { Language } from '../../quantity/language.ts';
import { fill } from '../catalogue.ts';
import type { MechanicsKey } from './catalogue.ts';
import { type Remark, shownFigures } from './remark.ts';
import { mechanicsCatalogue } from './say.ts';

/** A remark in a language; one that the catalogues do not know, as from a later version, in its own English. */
export function sayRemark({ code, figures, message }: Remark, language: Language): string {
  const texts = mechanicsCatalogue(language);
  const isKnown = (key: string): key is MechanicsKey => key in texts;
  const word = (name: string) => {
    const key = `word.${name}`;
    return isKnown(key) ? texts[key] : name;
  };
  // A list of words is said word by word.
  const wordOf = (name: string) =>
    isKnown(`word.${name}`) || !name.includes(', ') ? word(name) : name.split(', ').map(word).join(', ');
  const key = `remark.${code}`;
  return isKnown(key) ? fill(texts[key], shownFigures(figures, language, wordOf)) : message;
}
