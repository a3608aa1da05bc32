import { sayStage } from '@clampwright/core/language';
import type { JobJoint, JointState } from '@clampwright/core/record';
import { Link } from '@tanstack/react-router';
import { useTranslation } from 'react-i18next';
import { useLanguage } from '../app/language.ts';
import type { JobInHand } from '../jobs/job-in-hand.ts';
import { type PlaceInWork, progressOfJoint } from '../jobs/place-in-work.ts';
import { Progress } from '../parts/progress.tsx';

interface WorkStripProps {
  readonly job: JobInHand;
  readonly jobJoint: JobJoint;
  readonly joint: JointState;
  readonly place: PlaceInWork;
}

/** Where we are: job, joint, stage, round, and what is left. */
export function WorkStrip({ job, jobJoint, joint, place }: WorkStripProps) {
  const { t } = useTranslation();
  const language = useLanguage();
  const { step, progress } = place;
  return (
    <header className="work-strip">
      <title>{jobJoint.label}</title>
      <div>
        <Link to="/jobs/$jobId" params={{ jobId: job.state.jobId }} className="work-back">
          {job.state.sheet.title}
        </Link>
        <h1 className="work-title">{t('joint.heading', { ref: jobJoint.ref, label: jobJoint.label })}</h1>
      </div>
      <p className="work-stage">
        <strong>
          {t('work.stage', { stage: step.stage, stages: place.stages, kind: sayStage(step.kind, language) })}
        </strong>
        <span>
          {place.rounds > 1 ? `${t('work.round', { round: step.round, rounds: place.rounds })} · ` : ''}
          {t('work.left', { count: progress.total - progress.done })}
        </span>
      </p>
      <Progress {...progressOfJoint(joint)} label={t('job.progress', { title: jobJoint.label })} />
    </header>
  );
}
