import type { JobListItem } from '@clampwright/server/contract';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import { Choice } from '../parts/choice.tsx';
import { PageHeader } from '../parts/page-header.tsx';
import { EmptyState, Loading, Trouble } from '../parts/states.tsx';
import { JobRow } from './job-row.tsx';
import { jobsQuery } from './jobs-query.ts';
import './jobs.css';

const FILTERS = ['in-hand', 'closed', 'all'] as const;
type Filter = (typeof FILTERS)[number];

const passes = (job: JobListItem, filter: Filter): boolean =>
  filter === 'all' || (filter === 'closed') === (job.status === 'closed');

/** Every job, those in hand first. */
export default function JobsPlace() {
  const { t } = useTranslation();
  const jobs = useQuery(jobsQuery);
  const [filter, setFilter] = useState<Filter>('in-hand');
  const shown = jobs.data?.filter((job) => passes(job, filter)) ?? [];
  return (
    <>
      <PageHeader title={t('place.jobs')}>
        <Choice
          label={t('jobs.show')}
          value={filter}
          onChange={setFilter}
          options={FILTERS.map((value) => ({ value, label: t(`jobs.filter.${value}`) }))}
        />
      </PageHeader>
      {jobs.isPending ? <Loading /> : null}
      {jobs.isError ? <Trouble error={jobs.error} onRetry={() => void jobs.refetch()} /> : null}
      {jobs.data && shown.length === 0 ? (
        <EmptyState title={t(`jobs.none.${filter}`)} text={t('jobs.none-text')} />
      ) : null}
      <ul className="job-list">
        {shown.map((job) => (
          <JobRow key={job.id} job={job} />
        ))}
      </ul>
    </>
  );
}
