import { isUnsettled, type JointState } from '@clampwright/core/record';
import { Link } from '@tanstack/react-router';
import { useTranslation } from 'react-i18next';
import type { JobInHand } from '../jobs/job-in-hand.ts';
import { buttonClass } from '../parts/button.tsx';

interface JointDoneProps {
  readonly job: JobInHand;
  readonly joint: JointState;
}

/** Every position of the joint has its verdict: on to the next joint, or to the sign-off. */
export function JointDone({ job, joint }: JointDoneProps) {
  const { t } = useTranslation();
  const { jobId, sheet, joints, status } = job.state;
  const next = joints.find((other) => other.ref !== joint.ref && other.next);
  const label = sheet.joints.find(({ ref }) => ref === next?.ref)?.label ?? '';
  return (
    <section className="joint-done" aria-live="polite">
      <h2 className="joint-done-title">{t(isUnsettled(joint) ? 'done.unsettled' : 'done.title')}</h2>
      <p>{t(next ? 'done.text-next' : `done.text-last.${status}`)}</p>
      {next ? (
        <Link
          to="/jobs/$jobId/work/$jointRef"
          params={{ jobId, jointRef: next.ref }}
          className={buttonClass('primary', 'work')}
        >
          {t('done.next-joint', { ref: next.ref, label })}
        </Link>
      ) : (
        <Link to="/jobs/$jobId" params={{ jobId }} hash="finish" className={buttonClass('primary', 'work')}>
          {t(`done.to-end.${status}`)}
        </Link>
      )}
    </section>
  );
}
