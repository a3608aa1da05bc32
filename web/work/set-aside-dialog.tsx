import { useTranslation } from 'react-i18next';
import type { JobInHand } from '../jobs/job-in-hand.ts';
import { ReasonDialog } from '../jobs/reason-dialog.tsx';
import { useCommand } from '../jobs/use-command.ts';
import type { LastPull } from './last-pull.ts';

interface SetAsideDialogProps {
  readonly job: JobInHand;
  readonly last: LastPull;
  readonly onClose: () => void;
}

/** Sets the last pull aside: it stays in the record but no longer counts. */
export function SetAsideDialog({ job, last, onClose }: SetAsideDialogProps) {
  const { t } = useTranslation();
  const ask = useCommand(job.state.jobId);
  return (
    <ReasonDialog
      title={t('aside.title', { position: last.position })}
      action={t('last.set-aside')}
      usual={[t('aside.usual-slipped'), t('aside.usual-typed'), t('aside.usual-setting')]}
      error={ask.error}
      isBusy={ask.isPending}
      onSend={(reason) =>
        ask.mutate({ command: { kind: 'set-pull-aside', pullId: last.pullId, reason } }, { onSuccess: onClose })
      }
      onClose={onClose}
    >
      <p>{t('aside.text')}</p>
    </ReasonDialog>
  );
}
