import type { JobJoint } from '@clampwright/core/record';
import type { Tool } from '@clampwright/core/wrench';
import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import { Button } from '../parts/button.tsx';
import { DialogActions } from '../parts/dialog.tsx';
import { useNow } from '../parts/now.ts';
import { Trouble } from '../parts/states.tsx';
import type { JobInHand } from './job-in-hand.ts';
import { ReasonDialog } from './reason-dialog.tsx';
import { assessFor } from './tool-assessment.ts';
import { ToolFit } from './tool-fit.tsx';
import { toolName } from './tool-name.ts';
import { type LeadWord, NobodyActs, useCommand } from './use-command.ts';

interface TakeToolProps {
  readonly job: JobInHand;
  readonly tool: Tool;
  /** For which of the job it is taken. */
  readonly joints: readonly JobJoint[];
  readonly onClose: () => void;
}

/** Says how the tool suits each joint, and takes it: as it is, or by the lead’s exception. */
export function TakeTool({ job, tool, joints, onClose }: TakeToolProps) {
  const { t } = useTranslation();
  const ask = useCommand(job.state.jobId);
  const [isExcepting, setExcepting] = useState(false);
  const fits = assessFor(tool, joints, useNow().toISOString());
  const isRefused = fits.some(({ objections }) => objections.length > 0);
  const take = (exceptionReason?: string, lead?: LeadWord) =>
    ask.mutate(
      {
        command: {
          kind: 'take-tool',
          wrenchId: tool.wrench.id,
          ...(tool.adapter ? { adapterId: tool.adapter.id } : {}),
          ...(tool.extension ? { extensionId: tool.extension.id } : {}),
          jointRefs: joints.map(({ ref }) => ref),
          ...(exceptionReason === undefined ? {} : { exceptionReason }),
        },
        lead,
      },
      { onSuccess: onClose },
    );
  return (
    <>
      {fits.map((fit) => (
        <ToolFit key={fit.jobJoint.ref} fit={fit} tool={tool} isNamed={joints.length > 1} />
      ))}
      {ask.error && !isExcepting && !(ask.error instanceof NobodyActs) ? <Trouble error={ask.error} /> : null}
      <DialogActions>
        {isRefused ? (
          <Button kind="grave" onPress={() => setExcepting(true)}>
            {t('tool.except')}
          </Button>
        ) : (
          <Button kind="primary" isDisabled={joints.length === 0 || ask.isPending} onPress={() => take()}>
            {t('tool.take')}
          </Button>
        )}
        <Button onPress={onClose}>{t('act.cancel')}</Button>
      </DialogActions>
      {isExcepting ? (
        <ReasonDialog
          title={t('tool.except-title')}
          action={t('tool.except-take')}
          usual={[]}
          needsLead
          error={ask.error}
          isBusy={ask.isPending}
          onSend={take}
          onClose={() => setExcepting(false)}
        >
          <p>{t('tool.except-text', { tool: toolName(tool) })}</p>
        </ReasonDialog>
      ) : null}
    </>
  );
}
