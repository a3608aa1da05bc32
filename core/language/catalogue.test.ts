import { describe, expect, it } from 'vitest';
import { LANGUAGES } from '../quantity/language.ts';
import { fill, placeholders } from './catalogue.ts';
import { english } from './english.ts';
import { catalogue, say } from './say.ts';

const keys = Object.keys(english);
const others = LANGUAGES.filter((language) => language !== 'en');

describe('the catalogues', () => {
  it.each(others)('%s has exactly the keys of English', (language) => {
    expect(Object.keys(catalogue(language)).toSorted()).toEqual(keys.toSorted());
  });

  it.each(others)('%s fills the same placeholders as English', (language) => {
    const theirs = Object.entries(catalogue(language)).map(([key, text]) => [key, placeholders(text).toSorted()]);
    const ours = new Map(Object.entries(english).map(([key, text]) => [key, placeholders(text).toSorted()]));
    expect(theirs).toEqual(theirs.map(([key]) => [key, ours.get(String(key))]));
  });

  it.each(LANGUAGES)('%s leaves no text empty and no stray space', (language) => {
    for (const [key, text] of Object.entries(catalogue(language))) {
      expect(text, key).toBe(text.trim());
      expect(text, key).not.toBe('');
      expect(text, key).not.toMatch(/ {2}/);
    }
  });

  // Lexique des règles typographiques en usage à l'Imprimerie nationale: a no-break space before : ; ! ? and inside « » (from memory)
  it('sets French punctuation with a no-break space', () => {
    for (const [key, text] of Object.entries(catalogue('fr')))
      expect(text, key).not.toMatch(/(?<!\u00a0) ?[:;!?»](?= |$)|«(?!\u00a0)/);
  });

  it('stays small: a language is no more than 16 kB', () => {
    for (const language of LANGUAGES) expect(JSON.stringify(catalogue(language)).length).toBeLessThan(16_000);
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
