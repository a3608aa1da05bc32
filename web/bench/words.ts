import { useTranslation } from 'react-i18next';
import type lead from '../words/lead.en.json';

type Words = typeof lead.bench;

export interface BenchWords {
  /** Name of a field of a calculation; the registry's own where the catalogue has none. */
  readonly field: (name: string) => string;
  readonly hint: (name: string) => string | undefined;
  /** A word that a calculation takes or gives, such as `star`. */
  readonly value: (text: string) => string;
}

/** Words for the fields and values of the registry, which are only known when it is read. */
export function useBenchWords(): BenchWords {
  const { t, i18n } = useTranslation('lead');
  const has = (key: string) => i18n.exists(key, { ns: 'lead' });
  const isField = (name: string): name is keyof Words['field'] => has(`bench.field.${name}`);
  const isHint = (name: string): name is keyof Words['hint'] => has(`bench.hint.${name}`);
  const isValue = (text: string): text is keyof Words['value'] =>
    /^[\w-]+( [\w-]+)*$/.test(text) && has(`bench.value.${text}`);
  return {
    field: (name) => (isField(name) ? t(`bench.field.${name}`) : name),
    hint: (name) => (isHint(name) ? t(`bench.hint.${name}`) : undefined),
    value: (text) => (isValue(text) ? t(`bench.value.${text}`) : text),
  };
}
