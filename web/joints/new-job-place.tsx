import { useQuery } from '@tanstack/react-query';
import { getRouteApi, Link } from '@tanstack/react-router';
import { useTranslation } from 'react-i18next';
import { buttonClass } from '../parts/button.tsx';
import { PageHeader } from '../parts/page-header.tsx';
import { EmptyState, Loading, Trouble } from '../parts/states.tsx';
import { assetsQuery } from './job/assets.ts';
import { released } from './job/job-form.ts';
import { NewJobForm } from './job/new-job-form.tsx';
import { jointsQuery } from './joints.ts';
import './joints.css';

const route = getRouteApi('/jobs/new');

/** A job made from released joints for one asset. */
export default function NewJobPlace() {
  const { t } = useTranslation('lead');
  const { joint } = route.useSearch();
  // A list from before the last release knows the joint not yet, or at an older revision: it is never worked from.
  const joints = useQuery({ ...jointsQuery, refetchOnMount: 'always' });
  const assets = useQuery(assetsQuery);
  const error = joints.error ?? assets.error;
  const usable = joints.isFetchedAfterMount && joints.data ? released(joints.data) : undefined;
  return (
    <>
      <PageHeader
        above={<Link to="/joints">{t('joints.title')}</Link>}
        title={t('new-job.title')}
        text={t('new-job.text')}
      />
      {error ? <Trouble error={error} /> : null}
      {!error && !(usable && assets.data) ? <Loading /> : null}
      {usable?.length === 0 ? (
        <EmptyState title={t('new-job.no-joints')} text={t('new-job.no-joints-text')}>
          <Link to="/joints" className={buttonClass('primary')}>
            {t('joints.title')}
          </Link>
        </EmptyState>
      ) : null}
      {usable && usable.length > 0 && assets.data ? (
        <NewJobForm joints={usable} assets={assets.data} firstJointId={joint} />
      ) : null}
    </>
  );
}
