import { checkJoint, type JointRevision, warnJoint } from '@clampwright/core/joint';
import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import { useWho } from '../app/who.tsx';
import { Button } from '../parts/button.tsx';
import { ConfirmDialog } from '../parts/confirm-dialog.tsx';
import { JointWarnings } from '../parts/joint-warnings.tsx';
import { Notice } from '../parts/notice.tsx';
import { Trouble } from '../parts/states.tsx';
import { MendList } from './editor/mend-list.tsx';
import { faultOfCheck } from './form/mend.ts';
import { useReleaseJoint } from './joints.ts';

/** What stands between a draft and its release. */
export function ReleaseDraft({ draft }: { readonly draft: JointRevision }) {
  const { t } = useTranslation('lead');
  const who = useWho();
  const releasing = useReleaseJoint();
  const [isAsking, setAsking] = useState(false);
  const faults = checkJoint(draft.content).map((failure) => faultOfCheck(failure, draft.content));
  if (faults.length > 0) return <MendList faults={faults} />;
  const release = async () => {
    setAsking(false);
    if (await who.ask()) releasing.mutate(draft.id);
  };
  return (
    <Notice kind="plain" title={t('joints.draft-whole')}>
      <Button kind="primary" isDisabled={releasing.isPending} onPress={() => setAsking(true)}>
        {t('editor.release')}
      </Button>
      {releasing.isError ? <Trouble error={releasing.error} /> : null}
      {isAsking ? (
        <ConfirmDialog
          title={t('editor.release-title')}
          action={t('editor.release')}
          onClose={() => setAsking(false)}
          onConfirm={() => void release()}
        >
          <p>{t('editor.release-text')}</p>
          <JointWarnings warnings={warnJoint(draft.content)} fastener={draft.content.fastener} />
        </ConfirmDialog>
      ) : null}
    </Notice>
  );
}
