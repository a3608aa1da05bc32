import { showNumber } from '@clampwright/core/quantity';
import { useTranslation } from 'react-i18next';
import { useLanguage } from '../app/language.ts';
import type { FigureFault } from './figure-fault.ts';

const EXAMPLE = 12.5;

/** Says why a figure is not taken and how to write it; nothing where there is no fault. */
export function useFigureWords(): (fault: FigureFault | undefined) => string | undefined {
  const { t } = useTranslation('technician');
  const language = useLanguage();
  return (fault) => {
    switch (fault?.kind) {
      case undefined:
        return undefined;
      case 'not-read':
        return t('figure.not-read', { text: fault.text, example: showNumber(EXAMPLE, language) });
      case 'ambiguous':
        return t('figure.ambiguous', {
          text: fault.text,
          whole: showNumber(fault.whole, language),
          decimal: showNumber(fault.decimal, language, { decimals: 3 }),
        });
      case 'negative':
        return t('figure.negative', { text: fault.text });
      case 'absurd':
        return fault.meant
          ? t('figure.absurd-meant', { text: fault.text, unit: fault.unit, meant: fault.meant })
          : t('figure.absurd', { text: fault.text, unit: fault.unit });
    }
  };
}
