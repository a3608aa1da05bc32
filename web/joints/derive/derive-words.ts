import { sayCitation } from '@clampwright/core/language';
import { showNumber } from '@clampwright/core/quantity';
import { useTranslation } from 'react-i18next';
import { useLanguage } from '../../app/language.ts';
import type { FrictionChoice } from './friction-choice.ts';
import type { Method } from './methods.ts';
import { lubricantKey, methodKey, surfaceKey } from './table-keys.ts';

/** Words for what is chosen from the tables, and for where it was taken from. */
export function useDeriveWords() {
  const { t } = useTranslation('lead');
  const language = useLanguage();
  const figure = (value: number) => showNumber(value, language);
  const range = (lowest: number, highest: number | undefined) =>
    highest === undefined
      ? t('derive.from', { lowest: figure(lowest) })
      : t('derive.from-to', { lowest: figure(lowest), highest: figure(highest) });
  const lubrication = (surface: string, lubricant: string) =>
    [t(`derive.surface.${surfaceKey(surface)}`), t(`derive.lubricant.${lubricantKey(lubricant)}`)].join(', ');

  const friction = (choice: FrictionChoice): string => {
    switch (choice.kind) {
      case 'own':
        return t('derive.own', { name: choice.row.name });
      case 'table':
        return lubrication(choice.row.surface, choice.row.lubricant);
      case 'typed':
        return t('derive.friction-typed');
    }
  };
  const frictionCited = (choice: FrictionChoice, typed: string): string => {
    switch (choice.kind) {
      case 'own':
        return t('derive.cites-friction', { what: choice.row.name, source: choice.row.source });
      case 'table': {
        const what = `${friction(choice)}, ${range(choice.range.lowest, choice.range.highest)}`;
        return t('derive.cites-friction', { what, source: sayCitation('VDI 2230-1:2015, table A5', language) });
      }
      case 'typed':
        return t('derive.cites-friction', { what: t('derive.friction-typed'), source: typed });
    }
  };
  const method = ({ row }: Method): string => t(`derive.method.${methodKey(row.method)}`);
  const guideValues = ({ row }: Method): string => t('derive.guide-values', { range: range(row.lowest, row.highest) });
  const methodCited = (chosen: Method): string => {
    const cited = t('derive.cites-factor', {
      what: `${method(chosen)}, ${range(chosen.row.lowest, chosen.row.highest)}`,
      source: sayCitation('VDI 2230-1:2015, table A8', language),
    });
    return chosen.row.had === 'from memory' ? `${cited} ${t('derive.from-memory')}` : cited;
  };
  return { friction, frictionCited, method, methodCited, guideValues, range };
}
