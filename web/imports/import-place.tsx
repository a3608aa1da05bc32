import { useQuery } from '@tanstack/react-query';
import { getRouteApi, Link } from '@tanstack/react-router';
import { useTranslation } from 'react-i18next';
import { jobQuery } from '../jobs/job-query.ts';
import { Notice } from '../parts/notice.tsx';
import { PageHeader } from '../parts/page-header.tsx';
import { Loading, Trouble } from '../parts/states.tsx';
import { ImportSheets } from './import-sheets.tsx';
import './imports.css';

const route = getRouteApi('/jobs/$jobId/import');

/** Pulls from a file into one job. */
export default function ImportPlace() {
  const { t } = useTranslation('lead');
  const { jobId } = route.useParams();
  const job = useQuery(jobQuery(jobId));
  return (
    <>
      <PageHeader
        above={
          <Link to="/jobs/$jobId" params={{ jobId }}>
            {job.data ? job.data.state.sheet.title : t('import.back')}
          </Link>
        }
        title={t('import.title')}
        text={t('import.text')}
      />
      {job.isPending ? <Loading /> : null}
      {job.isError ? <Trouble error={job.error} onRetry={() => void job.refetch()} /> : null}
      {job.data?.state.status === 'closed' ? <Notice kind="alarm" title={t('import.closed')} /> : null}
      {job.data && job.data.state.status !== 'closed' ? (
        <ImportSheets jobId={jobId} joints={job.data.state.sheet.joints} />
      ) : null}
    </>
  );
}
