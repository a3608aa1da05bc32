import type { JobJoint, JobState } from '@clampwright/core/record';
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
        <>
          <MissingTools jobId={jobId} joints={withoutTool(job.data.state)} />
          <ImportSheets jobId={jobId} joints={job.data.state.sheet.joints} />
        </>
      ) : null}
    </>
  );
}

/** Pulls are judged with the wrench that made them; without one they are all refused. */
const withoutTool = ({ sheet, joints }: JobState): readonly JobJoint[] =>
  sheet.joints.filter(({ ref }) => (joints.find((joint) => joint.ref === ref)?.tools.length ?? 0) === 0);

function MissingTools({ jobId, joints }: { readonly jobId: string; readonly joints: readonly JobJoint[] }) {
  const { t } = useTranslation('lead');
  if (joints.length === 0) return null;
  return (
    <Notice kind="caution" title={t('import.no-wrench', { joints: joints.map(({ label }) => label).join(', ') })}>
      <Link to="/jobs/$jobId" params={{ jobId }}>
        {t('import.choose-wrench')}
      </Link>
    </Notice>
  );
}
