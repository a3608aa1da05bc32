import { CALCULATIONS, type CalculationName } from '@clampwright/core/calculations';
import { useTranslation } from 'react-i18next';
import { Notice } from '../parts/notice.tsx';
import { Sheet } from '../parts/sheet.tsx';
import { cautionKeys } from './caution-keys.ts';

/** What to mind before the result is used. */
export function Cautions({ name }: { readonly name: CalculationName }) {
  const { t } = useTranslation('lead');
  return (
    <Notice kind="caution" title={t('bench.cautions')}>
      <ul className="caution-list">
        {cautionKeys(name).map((key) => (
          <li key={key}>{t(`bench.caution.${key}`)}</li>
        ))}
      </ul>
    </Notice>
  );
}

/** Where the formula and the figures come from, as the publications are called. */
export function Sources({ name }: { readonly name: CalculationName }) {
  const { t } = useTranslation('lead');
  const sources = CALCULATIONS.find((calculation) => calculation.name === name)?.sources ?? [];
  return (
    <Sheet title={t('bench.sources')}>
      <ul className="caution-list" lang="en">
        {sources.map((source) => (
          <li key={source}>{source}</li>
        ))}
      </ul>
    </Sheet>
  );
}
