import type { JointState } from '@clampwright/core/record';
import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import type { JobInHand } from '../jobs/job-in-hand.ts';
import { ReasonDialog } from '../jobs/reason-dialog.tsx';
import { useCommand } from '../jobs/use-command.ts';
import { Select } from '../parts/select.tsx';
import type { LastPull } from './last-pull.ts';

interface MovePullDialogProps {
  readonly job: JobInHand;
  readonly joint: JointState;
  readonly last: LastPull;
  readonly onClose: () => void;
}

/** Moves the last pull to the position that it was really made on; it is judged there anew. */
export function MovePullDialog({ job, joint, last, onClose }: MovePullDialogProps) {
  const { t } = useTranslation();
  const ask = useCommand(job.state.jobId);
  const [position, setPosition] = useState('');
  const from = joint.lastPull?.cell;
  const positions = joint.steps[0]?.order.toSorted((a, b) => a - b) ?? [];
  if (!from) return null;
  return (
    <ReasonDialog
      title={t('move.title', { position: last.position })}
      action={t('last.move')}
      usual={[t('move.usual')]}
      isComplete={position !== ''}
      error={ask.error}
      isBusy={ask.isPending}
      onSend={(reason) =>
        ask.mutate(
          {
            command: { kind: 'move-pull', pullId: last.pullId, to: { ...from, position: Number(position) }, reason },
          },
          { onSuccess: onClose },
        )
      }
      onClose={onClose}
    >
      <p>{t('move.text')}</p>
      <Select
        label={t('move.to')}
        value={position}
        onChange={setPosition}
        options={[
          { value: '', label: t('move.choose') },
          ...positions
            .filter((each) => each !== from.position)
            .map((each) => ({ value: String(each), label: String(each) })),
        ]}
      />
    </ReasonDialog>
  );
}
