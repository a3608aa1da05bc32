import type { JobListItem } from '@clampwright/server/contract';
import { queryOptions, useQuery } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import { useTranslation } from 'react-i18next';
import { get, having, listOf } from '../app/api.ts';
import { useLanguage } from '../app/language.ts';
import { buttonClass } from '../parts/button.tsx';
import { showInstant } from '../parts/dates.ts';
import { Ledger, LedgerRow } from '../parts/ledger.tsx';
import { PageHeader } from '../parts/page-header.tsx';
import { EmptyState, Loading, Trouble } from '../parts/states.tsx';
import './records.css';

const isListItem = having<JobListItem>('id', 'title', 'status', 'lastAt');

const recordsQuery = queryOptions({
  queryKey: ['jobs', 'closed'],
  queryFn: ({ signal }) => get('/jobs?status=closed', listOf(isListItem), signal),
});

/** The records of closed jobs, to take away, and the way to verify one. */
export default function RecordsPlace() {
  const { t } = useTranslation('lead');
  const records = useQuery(recordsQuery);
  return (
    <>
      <PageHeader title={t('records.title')} text={t('records.text')}>
        <Link to="/records/verify" className={buttonClass('primary')}>
          {t('records.verify')}
        </Link>
      </PageHeader>
      {records.isPending ? <Loading /> : null}
      {records.isError ? <Trouble error={records.error} onRetry={() => void records.refetch()} /> : null}
      {records.data ? <RecordList records={records.data} /> : null}
    </>
  );
}

function RecordList({ records }: { readonly records: readonly JobListItem[] }) {
  const { t } = useTranslation('lead');
  const language = useLanguage();
  if (records.length === 0) return <EmptyState title={t('records.none')} text={t('records.none-text')} />;
  return (
    <Ledger label={t('records.title')}>
      {records.map((job) => (
        <LedgerRow
          key={job.id}
          title={
            <Link to="/jobs/$jobId" params={{ jobId: job.id }}>
              {job.title}
            </Link>
          }
          facts={[
            job.assetLocation === '' ? job.assetName : `${job.assetName}, ${job.assetLocation}`,
            t('records.closed-at', { when: showInstant(job.lastAt, language) }),
            ...(job.demo ? [t('common.invented')] : []),
          ]}
          side={<Downloads job={job} />}
        />
      ))}
    </Ledger>
  );
}

const KINDS = ['pdf', 'json', 'csv', 'html'] as const;

function Downloads({ job }: { readonly job: JobListItem }) {
  const { t } = useTranslation('lead');
  const language = useLanguage();
  return (
    <span className="downloads">
      {KINDS.map((kind) => (
        <a
          key={kind}
          className={buttonClass(kind === 'pdf' ? 'plain' : 'quiet')}
          href={`/api/v1/jobs/${job.id}/record.${kind}?language=${language}`}
          download={kind !== 'html'}
          aria-label={t(`records.download-${kind}`, { title: job.title })}
        >
          {t(`records.${kind}`)}
        </a>
      ))}
    </span>
  );
}
