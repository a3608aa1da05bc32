import type { Today } from '@clampwright/server/contract';
import { useQuery } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import { useTranslation } from 'react-i18next';
import { useLanguage } from '../app/language.ts';
import { JobRow } from '../jobs/job-row.tsx';
import { showDay } from '../parts/dates.ts';
import { useNow } from '../parts/now.ts';
import { PageHeader } from '../parts/page-header.tsx';
import { Sheet } from '../parts/sheet.tsx';
import { EmptyState, Loading, Trouble } from '../parts/states.tsx';
import { UsualCautions } from '../parts/usual-cautions.tsx';
import { DemoBanner } from './demo-banner.tsx';
import { DueCalibrations } from './due-calibrations.tsx';
import { DueRetorques } from './due-retorques.tsx';
import { OpenRecalls } from './open-recalls.tsx';
import { todayQuery } from './today-query.ts';
import '../jobs/jobs.css';
import './today.css';

/** What is to be done today: jobs in hand, wrenches and joints that fall due. */
export default function TodayPlace() {
  const { t } = useTranslation();
  const language = useLanguage();
  const today = useQuery(todayQuery);
  return (
    <>
      <PageHeader title={t('place.today')} text={showDay(useNow(), language)} />
      <DemoBanner />
      {today.isPending ? <Loading /> : null}
      {today.isError ? <Trouble error={today.error} onRetry={() => void today.refetch()} /> : null}
      {today.data ? <TodaySheets today={today.data} /> : null}
      <UsualCautions />
    </>
  );
}

function TodaySheets({ today }: { readonly today: Today }) {
  const { t } = useTranslation();
  return (
    <>
      <OpenRecalls recalls={today.recalls} />
      <Sheet title={t('today.jobs')} side={<Link to="/jobs">{t('today.all-jobs')}</Link>}>
        {today.jobs.length === 0 ? (
          <EmptyState title={t('today.no-jobs')} text={t('today.no-jobs-text')}>
            <Link to="/joints">{t('today.to-joints')}</Link>
          </EmptyState>
        ) : (
          <ul className="job-list">
            {today.jobs.map((job) => (
              <JobRow key={job.id} job={job} />
            ))}
          </ul>
        )}
      </Sheet>
      <div className="today-due">
        <DueCalibrations wrenches={today.wrenches} references={today.references} />
        <DueRetorques retorques={today.retorques} />
      </div>
    </>
  );
}
