import type { JointRevision } from '@clampwright/core/joint';
import { useTranslation } from 'react-i18next';
import { StateWord } from '../parts/state-word.tsx';

/** Whether a revision may be worked by. */
export function RevisionState({ status }: { readonly status: JointRevision['status'] }) {
  const { t } = useTranslation('lead');
  return <StateWord kind={status === 'released' ? 'good' : 'open'}>{t(`joints.status.${status}`)}</StateWord>;
}
