import type { Step } from '@clampwright/core/procedure';
import type { CellState, JobJoint, JointState } from '@clampwright/core/record';
import { useTranslation } from 'react-i18next';
import type { JobInHand } from '../jobs/job-in-hand.ts';
import { ToolInHand } from '../jobs/tool-in-hand.tsx';
import { Notice } from '../parts/notice.tsx';
import { ConnectedWrench } from './connected-wrench.tsx';
import { LeadPrompt } from './lead-prompt.tsx';
import type { Live } from './live.ts';
import { PluggedWrench } from './plugged-wrench.tsx';
import { PullForm } from './pull-form.tsx';
import { ReworkPrompt } from './rework-prompt.tsx';
import { SimulatedWrench } from './simulated-wrench.tsx';
import type { PullSender } from './use-pull-sender.ts';

interface NextThingProps {
  readonly job: JobInHand;
  readonly joint: JointState;
  readonly jobJoint: JobJoint;
  readonly step: Step;
  readonly cell: CellState;
  readonly sender: PullSender;
  readonly live: Live;
}

/** What the position in hand waits for: a wrench, a pull, loosening, a new fastener, or the lead. */
export function NextThing({ job, joint, jobJoint, step, cell, sender, live }: NextThingProps) {
  const { t } = useTranslation();
  const tool = joint.tools.at(-1);
  const jobId = job.state.jobId;
  if (!tool) return <ToolInHand job={job} joint={joint} />;
  switch (cell.need) {
    case 'loosen':
    case 'replace':
      return <ReworkPrompt jobId={jobId} cell={cell} how={cell.need === 'loosen' ? 'loosened' : 'fastener-replaced'} />;
    case 'lead':
      return <LeadPrompt jobId={jobId} cell={cell} />;
    case 'pull':
    case 'nothing':
      return (
        <>
          {cell.need === 'nothing' ? <Notice kind="plain" title={t('work.already')} /> : null}
          {tool.wrench.connection.kind === 'simulated' ? <SimulatedWrench jobId={jobId} cell={cell} /> : null}
          {tool.wrench.connection.kind === 'serial' ? (
            <ConnectedWrench
              wrench={tool.wrench}
              word={live.wrenches.find(({ wrenchId }) => wrenchId === tool.wrench.id)}
            />
          ) : null}
          {tool.wrench.connection.kind === 'typed' ? (
            <PluggedWrench cell={cell} wrenchId={tool.wrench.id} sender={sender} />
          ) : null}
          <PullForm cell={cell} step={step} tool={tool} unit={jobJoint.joint.content.torqueUnit} sender={sender} />
        </>
      );
  }
}
