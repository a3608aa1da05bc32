import { showNumber } from '@clampwright/core/quantity';
import { ASSUMPTIONS } from '@clampwright/core/wrench';
import type { RecallPage } from '@clampwright/server/contract';
import { useTranslation } from 'react-i18next';
import { useLanguage } from '../app/language.ts';
import type { Assumed } from './recall-query.ts';

/** How many pulls lie outside their limits, as far as can be told. */
export function RecallSummary({ page, assumed }: { readonly page: RecallPage; readonly assumed: Assumed }) {
  const { t } = useTranslation('lead');
  const language = useLanguage();
  if (page.total === 0) return null;
  const { expectedOutside } = page;
  const expected =
    assumed === 'worst' ? Math.max(...ASSUMPTIONS.map((one) => expectedOutside[one])) : expectedOutside[assumed];
  const count = showNumber(expected, language, { decimals: expected < 10 ? 1 : 0 });
  return <p className="recall-expected">{t('care.recall-expected', { count, total: page.total })}</p>;
}
