import type { JobJoint, JointState } from '@clampwright/core/record';
import type { Tool } from '@clampwright/core/wrench';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import { Button } from '../parts/button.tsx';
import { Dialog, DialogActions } from '../parts/dialog.tsx';
import { useNow } from '../parts/now.ts';
import { EmptyState, Loading, Trouble } from '../parts/states.tsx';
import { Tick } from '../parts/tick.tsx';
import type { JobInHand } from './job-in-hand.ts';
import { ReasonDialog } from './reason-dialog.tsx';
import { assessFor, refusedWrenches } from './tool-assessment.ts';
import { type ToolChoice, toolOf } from './tool-choice.ts';
import { ToolFields } from './tool-fields.tsx';
import { ToolFit } from './tool-fit.tsx';
import { toolName } from './tool-name.ts';
import { toolboxQuery } from './toolbox-query.ts';
import { type LeadWord, NobodyActs, useCommand } from './use-command.ts';

interface ToolDialogProps {
  readonly job: JobInHand;
  /** The joint for which it was asked. */
  readonly joint: JointState;
  readonly onClose: () => void;
}

/** Chooses wrench, adapter and extension, and says at once what speaks against them. */
export function ToolDialog({ job, joint, onClose }: ToolDialogProps) {
  const { t } = useTranslation();
  const toolbox = useQuery(toolboxQuery);
  const now = useNow();
  const before = joint.tools.at(-1);
  const [choice, setChoice] = useState<ToolChoice>({
    wrenchId: before?.wrench.id ?? '',
    adapterId: before?.adapter?.id ?? '',
    extensionId: before?.extension?.id ?? '',
  });
  const [refs, setRefs] = useState<readonly string[]>([joint.ref]);
  const tool = toolbox.data && toolOf(choice, toolbox.data);
  return (
    <Dialog title={t('tool.title')} size="wide" onClose={onClose}>
      {toolbox.isPending ? <Loading /> : null}
      {toolbox.isError ? <Trouble error={toolbox.error} onRetry={() => void toolbox.refetch()} /> : null}
      {toolbox.data?.wrenches.length === 0 ? (
        <EmptyState title={t('tool.no-wrenches')} text={t('tool.no-wrenches-text')} />
      ) : null}
      {toolbox.data ? (
        <ToolFields
          toolbox={toolbox.data}
          choice={choice}
          onChange={setChoice}
          refusedIds={refusedWrenches(toolbox.data, choice, jointsOf(job, refs), now.toISOString())}
        />
      ) : null}
      <JointTicks job={job} refs={refs} onChange={setRefs} />
      {tool ? <TakeTool job={job} tool={tool} refs={refs} onClose={onClose} /> : null}
    </Dialog>
  );
}

const jointsOf = (job: JobInHand, refs: readonly string[]): readonly JobJoint[] =>
  job.state.sheet.joints.filter(({ ref }) => refs.includes(ref));

interface JointTicksProps {
  readonly job: JobInHand;
  readonly refs: readonly string[];
  readonly onChange: (refs: readonly string[]) => void;
}

/** For which joints of the job the tool is taken. */
function JointTicks({ job, refs, onChange }: JointTicksProps) {
  const { t } = useTranslation();
  const { joints } = job.state.sheet;
  if (joints.length === 1) return null;
  return (
    <fieldset className="tool-joints">
      <legend className="field-label">{t('tool.for')}</legend>
      {joints.map(({ ref, label }) => (
        <Tick
          key={ref}
          isChosen={refs.includes(ref)}
          onChange={(isChosen) => onChange(isChosen ? [...refs, ref] : refs.filter((other) => other !== ref))}
        >
          {t('joint.heading', { ref, label })}
        </Tick>
      ))}
    </fieldset>
  );
}

interface TakeToolProps {
  readonly job: JobInHand;
  readonly tool: Tool;
  readonly refs: readonly string[];
  readonly onClose: () => void;
}

function TakeTool({ job, tool, refs, onClose }: TakeToolProps) {
  const { t } = useTranslation();
  const ask = useCommand(job.state.jobId);
  const [isExcepting, setExcepting] = useState(false);
  const joints = jointsOf(job, refs);
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
          jointRefs: [...refs],
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
          <Button kind="primary" isDisabled={refs.length === 0 || ask.isPending} onPress={() => take()}>
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
