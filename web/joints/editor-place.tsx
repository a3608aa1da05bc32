import type { OwnBolt } from '@clampwright/core/fastener';
import type { JointContent, JointRevision } from '@clampwright/core/joint';
import { useQuery } from '@tanstack/react-query';
import { getRouteApi, Link, useNavigate } from '@tanstack/react-router';
import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import { useLanguage } from '../app/language.ts';
import { usePerson } from '../app/session.ts';
import { useWho } from '../app/who.tsx';
import { Notice } from '../parts/notice.tsx';
import { PageHeader } from '../parts/page-header.tsx';
import { Loading, Trouble } from '../parts/states.tsx';
import { type Brought, broughtIn } from './brought/brought.ts';
import { withStage } from './brought/fill-stage.ts';
import { Editor } from './editor/editor.tsx';
import { BLANK_JOINT } from './form/blank.ts';
import { formOf } from './form/from-content.ts';
import { jointQuery, useReleaseJoint, useSaveJoint } from './joints.ts';
import { boltChoices } from './own-rows/own-choices.ts';
import { ownRowsQuery } from './own-rows/own-rows.ts';
import './joints.css';

const route = getRouteApi('/joints/$jointId/edit');

/** A joint written anew, or a draft taken up again. */
export default function EditorPlace() {
  const { jointId } = route.useParams();
  const { isNew, bring } = route.useSearch();
  const [brought] = useState(() => broughtIn(bring));
  // Once it is kept, the address no longer says that it is new; the form stays as it is.
  const [beganNew] = useState(isNew === true);
  const joint = useQuery({ ...jointQuery(jointId), enabled: !beganNew });
  const ownRows = useQuery({ ...ownRowsQuery, enabled: brought?.stage !== undefined });
  if (joint.isError) return <Trouble error={joint.error} onRetry={() => void joint.refetch()} />;
  if (ownRows.isError) return <Trouble error={ownRows.error} onRetry={() => void ownRows.refetch()} />;
  if ((!beganNew && !joint.data) || (brought?.stage && !ownRows.data)) return <Loading />;
  const latest = beganNew || !joint.data ? undefined : latestOf(joint.data.revisions);
  return (
    <EditorPage
      key={jointId}
      jointId={jointId}
      latest={latest}
      brought={brought}
      bolts={boltChoices(ownRows.data ?? [], undefined)}
    />
  );
}

const latestOf = (revisions: readonly JointRevision[]): JointRevision | undefined =>
  revisions.toSorted((a, b) => b.revision - a.revision)[0];

interface EditorPageProps {
  readonly jointId: string;
  readonly latest: JointRevision | undefined;
  readonly brought: Brought | undefined;
  /** Own bolts, where what was brought may name one. */
  readonly bolts: readonly OwnBolt[];
}

function EditorPage({ jointId, latest, brought, bolts }: EditorPageProps) {
  const { t } = useTranslation('lead');
  const language = useLanguage();
  const person = usePerson();
  const keeping = useKeeping(jointId);
  const [began] = useState(latest);
  const [first] = useState(() => {
    const kept = began ? formOf(began.content, language) : BLANK_JOINT;
    return { kept, filled: brought ? withStage(kept, brought, bolts, language) : undefined };
  });
  const filledIndex = first.filled?.stageIndex;
  const revision = began === undefined ? 1 : began.status === 'released' ? began.revision + 1 : began.revision;
  return (
    <>
      <PageHeader
        above={<Link to="/joints">{t('joints.title')}</Link>}
        title={began ? began.content.name : t('editor.new')}
        text={t('editor.revision', { revision })}
      />
      {person && person.role !== 'lead' ? <Notice kind="plain" title={t('joints.lead-only')} /> : null}
      {began?.status === 'released' ? (
        <Notice kind="plain" title={t('editor.after-released', { revision: began.revision })} />
      ) : null}
      {filledIndex === undefined ? null : (
        <Notice kind="caution" title={t('bench.save.filled', { stage: filledIndex + 1 })} />
      )}
      <Editor
        kept={first.kept}
        initial={first.filled?.form ?? first.kept}
        brought={brought}
        hasDraft={began?.status === 'draft'}
        isBusy={keeping.isBusy}
        onSave={keeping.save}
        onRelease={keeping.release}
      />
      {keeping.error ? <Trouble error={keeping.error} /> : null}
    </>
  );
}

/** Keeping and releasing in the name of whoever works here. */
function useKeeping(jointId: string) {
  const who = useWho();
  const navigate = useNavigate();
  const saving = useSaveJoint();
  const releasing = useReleaseJoint();
  const save = async (content: JointContent): Promise<boolean> => {
    if (!(await who.ask())) return false;
    const kept = await saving.mutateAsync({ id: jointId, content }).catch(() => undefined);
    if (!kept) return false;
    await navigate({ to: '/joints/$jointId/edit', params: { jointId }, search: {}, replace: true });
    return true;
  };
  const release = async (): Promise<void> => {
    if (!(await who.ask())) return;
    const released = await releasing.mutateAsync(jointId).catch(() => undefined);
    if (released) await navigate({ to: '/joints/$jointId', params: { jointId }, ignoreBlocker: true });
  };
  return { save, release, isBusy: saving.isPending || releasing.isPending, error: saving.error ?? releasing.error };
}
