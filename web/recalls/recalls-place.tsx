import { useQuery } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import { useTranslation } from 'react-i18next';
import { useLanguage } from '../app/language.ts';
import { showInstant } from '../parts/dates.ts';
import { Ledger, LedgerRow } from '../parts/ledger.tsx';
import { PageHeader } from '../parts/page-header.tsx';
import { Progress } from '../parts/progress.tsx';
import { EmptyState, Loading, Trouble } from '../parts/states.tsx';
import { recallsQuery } from './recall-query.ts';

/** Every recall and how far it is. */
export default function RecallsPlace() {
  const { t } = useTranslation('lead');
  const language = useLanguage();
  const recalls = useQuery(recallsQuery);
  return (
    <>
      <PageHeader
        title={t('care.recalls')}
        text={t('care.recalls-about')}
        above={<Link to="/wrenches">{t('care.all-wrenches')}</Link>}
      />
      {recalls.isPending ? <Loading /> : null}
      {recalls.isError ? <Trouble error={recalls.error} onRetry={() => void recalls.refetch()} /> : null}
      {recalls.data?.length === 0 ? (
        <EmptyState title={t('care.recalls-none')} text={t('care.recalls-none-text')} />
      ) : null}
      {recalls.data && recalls.data.length > 0 ? (
        <Ledger label={t('care.recalls')}>
          {recalls.data.map(({ recall, wrench, pulls, rechecked }) => (
            <LedgerRow
              key={recall.id}
              title={
                <Link to="/recalls/$recallId" params={{ recallId: recall.id }}>
                  {t('care.recall-title', { name: wrench.name })}
                </Link>
              }
              facts={[wrench.serial, showInstant(recall.raisedAt, language), recall.by]}
              side={<Progress done={rechecked} total={pulls} label={t('care.recall-progress')} />}
            />
          ))}
        </Ledger>
      ) : null}
    </>
  );
}
