import type { JointListItem } from '@clampwright/server/contract';
import { useQuery } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import { buttonClass } from '../parts/button.tsx';
import { Ledger, LedgerRow } from '../parts/ledger.tsx';
import { PageHeader } from '../parts/page-header.tsx';
import { EmptyState, Loading, Trouble } from '../parts/states.tsx';
import { newIdentity } from '../work/identity.ts';
import { jointsQuery } from './joints.ts';
import { RevisionState } from './revision-state.tsx';

/** Every joint that is described here. */
export default function JointsPlace() {
  const { t } = useTranslation('lead');
  const joints = useQuery(jointsQuery);
  const [freshId] = useState(newIdentity);
  return (
    <>
      <PageHeader title={t('joints.title')} text={t('joints.text')}>
        <Link
          to="/joints/$jointId/edit"
          params={{ jointId: freshId }}
          search={{ isNew: true }}
          className={buttonClass('primary')}
        >
          {t('joints.write')}
        </Link>
        <Link to="/jobs/new" className={buttonClass()}>
          {t('joints.make-job')}
        </Link>
        <Link to="/joints/own-rows" className={buttonClass()}>
          {t('own.title')}
        </Link>
      </PageHeader>
      {joints.isPending ? <Loading /> : null}
      {joints.isError ? <Trouble error={joints.error} onRetry={() => void joints.refetch()} /> : null}
      {joints.data ? <JointList joints={joints.data} /> : null}
    </>
  );
}

function JointList({ joints }: { readonly joints: readonly JointListItem[] }) {
  const { t } = useTranslation('lead');
  if (joints.length === 0) return <EmptyState title={t('joints.none')} text={t('joints.none-text')} />;
  return (
    <Ledger label={t('joints.title')}>
      {joints.map((joint) => (
        <LedgerRow
          key={joint.id}
          title={
            <Link to="/joints/$jointId" params={{ jointId: joint.id }}>
              {joint.name}
            </Link>
          }
          facts={[
            joint.thread,
            t('joints.positions', { count: joint.positions }),
            t('joints.revision', { revision: joint.latestRevision }),
            ...(joint.demo ? [t('common.invented')] : []),
          ]}
          state={<RevisionState status={joint.latestStatus} />}
        />
      ))}
    </Ledger>
  );
}
