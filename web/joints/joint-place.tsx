import type { JointRevision } from '@clampwright/core/joint';
import type { JointHistory } from '@clampwright/server/contract';
import { useQuery } from '@tanstack/react-query';
import { getRouteApi, Link } from '@tanstack/react-router';
import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import { buttonClass } from '../parts/button.tsx';
import { Notice } from '../parts/notice.tsx';
import { PageHeader } from '../parts/page-header.tsx';
import { Select } from '../parts/select.tsx';
import { EmptyState, Loading, Trouble } from '../parts/states.tsx';
import { JointSheet } from './joint-sheet.tsx';
import { jointQuery } from './joints.ts';
import { JointPulls } from './pulls/joint-pulls.tsx';
import { ReleaseDraft } from './release-draft.tsx';
import { RevisionState } from './revision-state.tsx';
import './joints.css';

const route = getRouteApi('/joints/$jointId');

/** One joint with all its revisions. */
export default function JointPlace() {
  const { jointId } = route.useParams();
  const joint = useQuery(jointQuery(jointId));
  if (joint.isPending) return <Loading />;
  if (joint.isError) return <Trouble error={joint.error} onRetry={() => void joint.refetch()} />;
  return <JointPage key={jointId} jointId={jointId} history={joint.data} />;
}

function JointPage({ jointId, history }: { readonly jointId: string; readonly history: JointHistory }) {
  const { t } = useTranslation('lead');
  const revisions = history.revisions.toSorted((a, b) => b.revision - a.revision);
  const [chosen, setChosen] = useState<number>();
  const [latest] = revisions;
  const shown = revisions.find((one) => one.revision === chosen) ?? latest;
  if (!latest || !shown) return <EmptyState title={t('joints.none')} text={t('joints.none-text')} />;
  return (
    <>
      <PageHeader above={<Link to="/joints">{t('joints.title')}</Link>} title={shown.content.name}>
        <JointActions
          jointId={jointId}
          latest={latest}
          isReleased={revisions.some((one) => one.status === 'released')}
        />
      </PageHeader>
      {history.demo ? <Notice kind="demo" title={t('common.invented-joint')} /> : null}
      <div className="revision-line">
        <RevisionState status={shown.status} />
        <RevisionChoice revisions={revisions} shown={shown} onChoose={setChosen} />
      </div>
      {shown.status === 'draft' ? <ReleaseDraft draft={shown} /> : null}
      <JointSheet content={shown.content} />
      {shown.status !== 'draft' ? (
        <JointPulls key={shown.revision} jointId={jointId} revision={shown.revision} />
      ) : null}
    </>
  );
}

interface JointActionsProps {
  readonly jointId: string;
  readonly latest: JointRevision;
  readonly isReleased: boolean;
}

function JointActions({ jointId, latest, isReleased }: JointActionsProps) {
  const { t } = useTranslation('lead');
  return (
    <>
      {isReleased ? (
        <Link to="/jobs/new" search={{ joint: jointId }} className={buttonClass('primary')}>
          {t('joints.make-job')}
        </Link>
      ) : null}
      <Link to="/joints/$jointId/edit" params={{ jointId }} className={buttonClass()}>
        {latest.status === 'draft' ? t('joints.edit-draft') : t('joints.new-revision')}
      </Link>
    </>
  );
}

interface RevisionChoiceProps {
  readonly revisions: readonly JointRevision[];
  readonly shown: JointRevision;
  readonly onChoose: (revision: number) => void;
}

function RevisionChoice({ revisions, shown, onChoose }: RevisionChoiceProps) {
  const { t } = useTranslation('lead');
  if (revisions.length < 2) return <span>{t('joints.revision', { revision: shown.revision })}</span>;
  return (
    <Select
      label={t('joints.revision-shown')}
      value={String(shown.revision)}
      options={revisions.map(({ revision, status }) => ({
        value: String(revision),
        label: t('joints.revision-said', { revision, status: t(`joints.status.${status}`) }),
      }))}
      onChange={(revision) => onChoose(Number(revision))}
    />
  );
}
