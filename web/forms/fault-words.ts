import type { BoltFault } from '@clampwright/core/fastener';
import { sayFailure, sayFailureAtField } from '@clampwright/core/language';
import { type Language, showNumber } from '@clampwright/core/quantity';
import type { TFunction } from 'i18next';
import { useCallback } from 'react';
import { useTranslation } from 'react-i18next';
import { useLanguage } from '../app/language.ts';
import type { Fault } from './fault.ts';

const BOUND = {
  'less than': 'less-than',
  'at most': 'at-most',
  'more than': 'more-than',
  'at least': 'at-least',
} as const;

function boltFaultWords({ field, must, limit, than }: BoltFault, t: TFunction<'lead'>, language: Language): string {
  const label = than === 'core' ? t('own.core') : t(`bench.field.${than}`);
  const unit = field === 'stressAreaMm2' ? 'mm²' : 'mm';
  return t(`fault.bolt.${BOUND[must]}`, {
    limit: `${showNumber(Number(limit.toPrecision(4)), language)}\u00a0${unit}`,
    than: field === 'stressAreaMm2' ? t('own.enclosed', { than: label }) : label,
  });
}

/** Words for what is wrong with a field, and what it wants; beside the field itself its path is left out. */
export function useFaultWords(): (finding: Fault['finding'], isAtField?: boolean) => string {
  const { t } = useTranslation('lead');
  const language = useLanguage();
  return useCallback(
    (finding, isAtField = false) => {
      const figure = (value: number) => showNumber(value, language);
      switch (finding.kind) {
        case 'needed':
        case 'lower-above-upper':
        case 'below-zero':
        case 'due-before':
        case 'to-come':
        case 'pin':
        case 'pin-differs':
        case 'positive':
          return t(`fault.${finding.kind}`);
        case 'number':
          return t('fault.number', { text: finding.text, example: figure(12.5) });
        case 'torque':
          return finding.meant
            ? t('fault.torque-meant', { text: finding.text, unit: finding.unit, meant: finding.meant })
            : t('fault.torque', { text: finding.text, unit: finding.unit });
        case 'mend':
          return t(`fault.mend.${finding.word}`);
        case 'whole':
          return t('fault.whole', { from: figure(finding.from), to: figure(finding.to) });
        case 'between':
          return Number.isFinite(finding.to)
            ? t('fault.between', { from: figure(finding.from), to: figure(finding.to) })
            : t('fault.at-least', { from: figure(finding.from) });
        case 'each-once':
          return t('fault.each-once', { count: finding.count });
        case 'label-twice':
          return t('fault.label-twice', { label: finding.label });
        case 'taken':
          return t('fault.taken', { name: finding.name });
        case 'bolt':
          return boltFaultWords(finding.fault, t, language);
        case 'invalid':
        case 'not-found':
        case 'conflict':
        case 'forbidden':
        case 'unavailable':
          return isAtField ? sayFailureAtField(finding, language) : sayFailure(finding, language);
      }
    },
    [t, language],
  );
}
