import { warnJoint } from '@clampwright/core/joint';
import type { JobJoint } from '@clampwright/core/record';
import { Link } from '@tanstack/react-router';
import { useTranslation } from 'react-i18next';
import { buttonClass } from '../parts/button.tsx';
import { JointCautions } from '../parts/joint-cautions.tsx';
import { JointWarnings } from '../parts/joint-warnings.tsx';
import { Progress } from '../parts/progress.tsx';
import { Sheet } from '../parts/sheet.tsx';
import type { JobInHand } from './job-in-hand.ts';
import { JointNeeds } from './joint-needs.tsx';
import { progressOfJoint } from './place-in-work.ts';
import { StageList } from './stage-list.tsx';
import { ToolInHand } from './tool-in-hand.tsx';

interface JointSheetProps {
  readonly job: JobInHand;
  readonly jobJoint: JobJoint;
}

/** One joint of a job: what it needs, its stages, the wrench for it, and the way to its working screen. */
export function JointSheet({ job, jobJoint }: JointSheetProps) {
  const { t } = useTranslation();
  const joint = job.state.joints.find(({ ref }) => ref === jobJoint.ref);
  if (!joint) return null;
  const { content } = jobJoint.joint;
  const progress = progressOfJoint(joint);
  return (
    <Sheet
      title={t('joint.heading', { ref: jobJoint.ref, label: jobJoint.label })}
      side={<Progress {...progress} label={t('job.progress', { title: jobJoint.label })} />}
    >
      <JointCautions cautions={content.cautions} />
      {joint.next ? <JointWarnings warnings={warnJoint(content)} fastener={content.fastener} /> : null}
      <JointNeeds jobJoint={jobJoint} tool={joint.tools.at(-1)} />
      <StageList content={content} />
      <ToolInHand job={job} joint={joint} />
      <div className="actions">
        <Link
          to="/jobs/$jobId/work/$jointRef"
          params={{ jobId: job.state.jobId, jointRef: joint.ref }}
          className={buttonClass(joint.next && joint.tools.length > 0 ? 'primary' : 'plain')}
          aria-label={t('joint.to-work-named', { label: jobJoint.label })}
        >
          {t(workWord(joint.next !== undefined, progress.done))}
        </Link>
      </div>
    </Sheet>
  );
}

function workWord(isOpen: boolean, done: number): 'joint.look' | 'job.begin' | 'job.continue' {
  if (!isOpen) return 'joint.look';
  return done === 0 ? 'job.begin' : 'job.continue';
}
