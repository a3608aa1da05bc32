import { describe, expect, it } from 'vitest';
import leadDe from './lead.de.json' with { type: 'json' };
import leadEn from './lead.en.json' with { type: 'json' };
import leadEs from './lead.es.json' with { type: 'json' };
import leadFr from './lead.fr.json' with { type: 'json' };
import technicianDe from './technician.de.json' with { type: 'json' };
import technicianEn from './technician.en.json' with { type: 'json' };
import technicianEs from './technician.es.json' with { type: 'json' };
import technicianFr from './technician.fr.json' with { type: 'json' };

type Words = Readonly<Record<string, unknown>>;

const isWords = (value: unknown): value is Words => typeof value === 'object' && value !== null;

/** Every text under its dotted key. */
const flat = (words: Words, before = ''): readonly (readonly [string, string])[] =>
  Object.entries(words).flatMap(([key, value]) =>
    isWords(value) ? flat(value, `${before}${key}.`) : [[`${before}${key}`, String(value)] as const],
  );

/** One form a plural category; languages have categories of their own. */
const withoutPlural = (key: string) => key.replace(/_(one|many|other)$/, '');
const keysOf = (words: Words) => [...new Set(flat(words).map(([key]) => withoutPlural(key)))].toSorted();
const placeholdersOf = (text: string) => [...new Set(text.match(/\{\{\w+\}\}/g) ?? [])].toSorted();

describe.each<readonly [string, string, Words, Words]>([
  ['technician', 'de', technicianDe, technicianEn],
  ['technician', 'fr', technicianFr, technicianEn],
  ['technician', 'es', technicianEs, technicianEn],
  ['lead', 'de', leadDe, leadEn],
  ['lead', 'fr', leadFr, leadEn],
  ['lead', 'es', leadEs, leadEn],
])('the %s’s words in %s', (_half, language, words, en) => {
  it('say everything that the English ones say, and nothing else', () => {
    expect(keysOf(words)).toEqual(keysOf(en));
  });

  it('have every plural form that the language needs', () => {
    const forms = new Intl.PluralRules(language).resolvedOptions().pluralCategories;
    const keys = new Set(flat(words).map(([key]) => key));
    const counted = [...keys].filter((key) => key.endsWith('_other')).map(withoutPlural);
    const missing = counted.flatMap((key) => forms.map((form) => `${key}_${form}`)).filter((key) => !keys.has(key));
    expect(missing).toEqual([]);
  });

  it('fill in the same figures and names', () => {
    const english = new Map(flat(en));
    const differing = flat(words).filter(([key, text]) => {
      const same = english.get(key) ?? english.get(`${withoutPlural(key)}_other`) ?? '';
      return placeholdersOf(text).join() !== placeholdersOf(same).join();
    });
    expect(differing).toEqual([]);
  });

  it('leave no text empty', () => {
    expect(flat(words).filter(([, text]) => text.trim() === '')).toEqual([]);
  });
});

describe.each<readonly [string, Words]>([
  ['technician’s English', technicianEn],
  ['technician’s German', technicianDe],
  ['technician’s French', technicianFr],
  ['technician’s Spanish', technicianEs],
  ['lead’s English', leadEn],
  ['lead’s German', leadDe],
  ['lead’s French', leadFr],
  ['lead’s Spanish', leadEs],
])('the %s', (_which, words) => {
  // SI Brochure, 9th edition, 5.4.3: a space stands between figure and unit, also before %; here one that does not break.
  it('keeps a figure and its unit on one line', () => {
    const unit = String.raw`(?:%|°C|N·m|k?N|MPa|[µmck]?m|mm²|kg|K|Hz|ms|s|h|min|\{\{unit\}\})(?![\p{L}\d’])`;
    const loose = new RegExp(String.raw`[}\d] ${unit}|± [{\d%]`, 'u');
    expect(flat(words).filter(([, text]) => loose.test(text))).toEqual([]);
  });
});
