import type { JobJoint, JointState } from '@clampwright/core/record';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import { Button } from '../parts/button.tsx';
import { Dialog, DialogActions } from '../parts/dialog.tsx';
import { useNow } from '../parts/now.ts';
import { EmptyState, Loading, Trouble } from '../parts/states.tsx';
import { Tick } from '../parts/tick.tsx';
import type { JobInHand } from './job-in-hand.ts';
import { RefusedWrenches } from './refused-wrenches.tsx';
import { TakeTool } from './take-tool.tsx';
import { rankWrenches } from './tool-assessment.ts';
import { type ToolChoice, toolOf } from './tool-choice.ts';
import { ToolFields } from './tool-fields.tsx';
import { toolboxQuery } from './toolbox-query.ts';

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
  const ranked = toolbox.data ? rankWrenches(toolbox.data, choice, jointsOf(job, refs), now.toISOString()) : [];
  return (
    <Dialog title={t('tool.title')} size="wide" onClose={onClose}>
      {toolbox.isPending ? <Loading /> : null}
      {toolbox.isError ? <Trouble error={toolbox.error} onRetry={() => void toolbox.refetch()} /> : null}
      {toolbox.data?.wrenches.length === 0 ? (
        <EmptyState title={t('tool.no-wrenches')} text={t('tool.no-wrenches-text')} />
      ) : null}
      {toolbox.data ? (
        <>
          <ToolFields toolbox={toolbox.data} choice={choice} onChange={setChoice} ranked={ranked} />
          <RefusedWrenches ranked={ranked} />
        </>
      ) : null}
      <JointTicks job={job} refs={refs} onChange={setRefs} />
      {tool ? (
        <TakeTool job={job} tool={tool} joints={jointsOf(job, refs)} onClose={onClose} />
      ) : (
        <DialogActions>
          <Button kind="primary" isDisabled>
            {t('tool.take')}
          </Button>
          <Button onPress={onClose}>{t('act.cancel')}</Button>
        </DialogActions>
      )}
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
