import { useQuery } from '@tanstack/react-query';
import { Link, useParams } from '@tanstack/react-router';
import { useTranslation } from 'react-i18next';
import { useLanguage } from '../app/language.ts';
import { buttonClass } from '../parts/button.tsx';
import { showInstant } from '../parts/dates.ts';
import { Notice } from '../parts/notice.tsx';
import { PageHeader } from '../parts/page-header.tsx';
import { Progress } from '../parts/progress.tsx';
import { Loading, Trouble } from '../parts/states.tsx';
import { TitleBlock } from '../parts/title-block.tsx';
import { UsualCautions } from '../parts/usual-cautions.tsx';
import { Finish } from './finish.tsx';
import { History } from './history.tsx';
import type { JobInHand } from './job-in-hand.ts';
import { jobQuery } from './job-query.ts';
import { JointSheet } from './joint-sheet.tsx';
import { jointToContinue } from './joint-to-continue.ts';
import { progressOfJob } from './place-in-work.ts';
import { useLiveJob } from './use-live-job.ts';
import './jobs.css';

/** One job: what is needed, how far it is, what has happened, and its end. */
export default function JobPlace() {
  const { jobId } = useParams({ from: '/jobs/$jobId' });
  const job = useQuery(jobQuery(jobId));
  useLiveJob(jobId);
  if (job.isError) return <Trouble error={job.error} onRetry={() => void job.refetch()} />;
  if (!job.data) return <Loading />;
  return <JobPage job={job.data} />;
}

function JobPage({ job }: { readonly job: JobInHand }) {
  const { t } = useTranslation();
  const { state } = job;
  return (
    <>
      <PageHeader
        title={state.sheet.title}
        text={[state.sheet.asset.name, state.sheet.asset.location].filter(Boolean).join(', ')}
        above={<Link to="/jobs">{t('place.jobs')}</Link>}
      >
        <ContinueLink job={job} />
      </PageHeader>
      {state.sheet.demo ? <Notice kind="demo" title={t('demo.title')} /> : null}
      <JobFacts job={job} />
      {state.status === 'closed' ? null : <UsualCautions />}
      {state.sheet.joints.map((jobJoint) => (
        <JointSheet key={jobJoint.ref} job={job} jobJoint={jobJoint} />
      ))}
      <Finish job={job} />
      <History entries={job.entries} state={job.state} />
    </>
  );
}

function JobFacts({ job }: { readonly job: JobInHand }) {
  const { t } = useTranslation();
  const language = useLanguage();
  const { state } = job;
  return (
    <div className="job-facts">
      <Progress {...progressOfJob(state)} label={t('job.progress', { title: state.sheet.title })} />
      <TitleBlock
        cells={[
          { label: t('job.status-label'), value: t(`job.status.${state.status}`) },
          { label: t('job.opened'), value: showInstant(state.openedAt, language) },
          { label: t('job.last'), value: showInstant(state.lastAt, language) },
        ]}
      />
    </div>
  );
}

function ContinueLink({ job }: { readonly job: JobInHand }) {
  const { t } = useTranslation();
  const jointRef = jointToContinue(job.state);
  if (jointRef === undefined) return null;
  const isBegun = progressOfJob(job.state).done > 0;
  return (
    <Link
      to="/jobs/$jobId/work/$jointRef"
      params={{ jobId: job.state.jobId, jointRef }}
      className={buttonClass('primary', 'work')}
    >
      {t(isBegun ? 'job.continue' : 'job.begin')}
    </Link>
  );
}
