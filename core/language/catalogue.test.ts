import { describe, expect, it } from 'vitest';
import { LANGUAGES, type Language } from '../quantity/language.ts';
import { careCatalogue } from './care/say.ts';
import { fill, placeholders } from './catalogue.ts';
import { mechanicsCatalogue } from './mechanics/say.ts';
import { catalogue, say } from './say.ts';

const others = LANGUAGES.filter((language) => language !== 'en');
type Texts = Readonly<Record<string, string>>;

describe.each<readonly [string, (language: Language) => Texts]>([
  ['the trade', catalogue],
  ['plots and mechanics', mechanicsCatalogue],
  ['the care of wrenches', careCatalogue],
])('the catalogues of %s', (_what, textsOf) => {
  it.each(others)('%s has exactly the keys of English', (language) => {
    expect(Object.keys(textsOf(language)).toSorted()).toEqual(Object.keys(textsOf('en')).toSorted());
  });

  it.each(others)('%s fills the same placeholders as English', (language) => {
    const theirs = Object.entries(textsOf(language)).map(([key, text]) => [key, placeholders(text).toSorted()]);
    const ours = new Map(Object.entries(textsOf('en')).map(([key, text]) => [key, placeholders(text).toSorted()]));
    expect(theirs).toEqual(theirs.map(([key]) => [key, ours.get(String(key))]));
  });

  it.each(LANGUAGES)('%s leaves no text empty and no stray space', (language) => {
    const texts = Object.entries(textsOf(language));
    expect(texts.filter(([, text]) => text === '' || text !== text.trim() || text.includes('  '))).toEqual([]);
  });

  // SI Brochure, 9th edition, 5.4.3: a space stands between figure and unit, also before %; here one that does not break.
  it.each(LANGUAGES)('%s keep a figure and its unit on one line', (language) => {
    const unit = String.raw`(?:%|°C|N·m|k?N|MPa|[µmck]?m|mm²|kg|K|Hz|ms|s|h|min|\{unit\})(?![\p{L}\d’])`;
    const loose = new RegExp(String.raw`[}\d] ${unit}|± [{\d%]`, 'u');
    expect(Object.entries(textsOf(language)).filter(([, text]) => loose.test(text))).toEqual([]);
  });

  // Lexique des règles typographiques en usage à l'Imprimerie nationale: a no-break space before : ; ! ? and inside « » (from memory)
  it('set French punctuation with a no-break space', () => {
    const loose = /(?<!\u00a0) ?[:;!?»](?= |$)|«(?!\u00a0)/;
    expect(Object.entries(textsOf('fr')).filter(([, text]) => loose.test(text))).toEqual([]);
  });

  it('stay small: a language is no more than 21.5 kB', () => {
    for (const language of LANGUAGES) expect(JSON.stringify(textsOf(language)).length).toBeLessThan(21_500);
  });
});

describe('say', () => {
  it('fills in what the text wants', () => {
    expect(say('de', 'page.of', { page: 2, pages: 7 })).toBe('Seite 2 von 7');
  });

  it('leaves a name without a value in sight', () => {
    expect(fill('{a} and {b}', { a: 1 })).toBe('1 and {b}');
  });
});
