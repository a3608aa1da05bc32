import type { Language } from '../../quantity/language.ts';
import type { MechanicsKey } from './catalogue.ts';
import { english } from './english.ts';
import { mechanicsCatalogue, sayMechanics } from './say.ts';

type CitationKey = Extract<MechanicsKey, `cite.${string}`>;
const isOfCitation = (key: string): key is CitationKey => key.startsWith('cite.');

/** English phrases of citations, the longest first, so that none is taken for a part of another. */
const PHRASES = Object.keys(english)
  .filter(isOfCitation)
  .toSorted((a, b) => english[b].length - english[a].length)
  .map((key) => ({ key, phrase: new RegExp(String.raw`(?<![\w-])${escaped(english[key])}(?![\w-])`, 'g') }));

function escaped(text: string): string {
  return text.replaceAll(/[.*+?^${}()|[\]\\]/g, String.raw`\$&`);
}

/** Where a formula or a bound stands, as it was kept in English; names and numbers of publications stay as they are. */
export function sayCitation(citation: string, language: Language): string {
  const texts = mechanicsCatalogue(language);
  const said = PHRASES.reduce((text, { key, phrase }) => text.replace(phrase, () => texts[key]), citation);
  return said.replaceAll(': ', sayMechanics(language, 'plot.reads', { name: '', value: '' }));
}
