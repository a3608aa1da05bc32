import { sayReason } from '@clampwright/core/language';
import { showAngle, showTorque } from '@clampwright/core/quantity';
import type { JobJoint, JointState } from '@clampwright/core/record';
import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import { useLanguage } from '../app/language.ts';
import type { JobInHand } from '../jobs/job-in-hand.ts';
import { Button } from '../parts/button.tsx';
import { VerdictBadge } from '../parts/verdict-badge.tsx';
import { TraceButton } from '../traces/trace-button.tsx';
import type { LastPull } from './last-pull.ts';
import { MovePullDialog } from './move-pull-dialog.tsx';
import { SetAsideDialog } from './set-aside-dialog.tsx';

interface LastVerdictProps {
  readonly job: JobInHand;
  readonly joint: JointState;
  readonly jobJoint: JobJoint;
  readonly last: LastPull | undefined;
}

/** What the last pull means, large: shape, word, colour, and why; with the way to mend a slip. */
export function LastVerdict({ job, joint, jobJoint, last }: LastVerdictProps) {
  const { t } = useTranslation();
  const [mending, setMending] = useState<'move' | 'set-aside'>();
  const unit = jobJoint.joint.content.torqueUnit;
  return (
    <section className="last" aria-label={t('last.title')}>
      <output className={`last-words${last ? ` last-${last.judgement.verdict}` : ''}`}>
        {last ? (
          <LastWords last={last} unit={unit} />
        ) : (
          <span className="soft">{t(wasPulled(joint) ? 'last.gone' : 'last.none')}</span>
        )}
      </output>
      {last ? (
        <TraceButton
          state={job.state}
          entry={job.entries.findLast(({ id }) => id === last.pullId)}
          unit={unit}
          isSilent
        />
      ) : null}
      {last && job.state.status !== 'closed' ? (
        <div className="actions">
          <Button onPress={() => setMending('move')}>{t('last.move')}</Button>
          <Button onPress={() => setMending('set-aside')}>{t('last.set-aside')}</Button>
        </div>
      ) : null}
      {last && mending === 'move' ? (
        <MovePullDialog job={job} joint={joint} last={last} onClose={() => setMending(undefined)} />
      ) : null}
      {last && mending === 'set-aside' ? (
        <SetAsideDialog job={job} last={last} onClose={() => setMending(undefined)} />
      ) : null}
    </section>
  );
}

const wasPulled = (joint: JointState): boolean => joint.cells.some((row) => row.some((cell) => cell.attemptCount > 0));

interface LastWordsProps {
  readonly last: LastPull;
  readonly unit: JobJoint['joint']['content']['torqueUnit'];
}

function LastWords({ last, unit }: LastWordsProps) {
  const { t } = useTranslation();
  const language = useLanguage();
  const { reading } = last.pull;
  return (
    <>
      <span className="last-head">
        <VerdictBadge verdict={last.judgement.verdict} size="large" />
        <span className="last-position">{t('last.position', { position: last.position })}</span>
      </span>
      <span className="last-figures">
        {showTorque(reading.torqueNm, unit, language)}
        {reading.angleDeg === undefined ? null : `, ${showAngle(reading.angleDeg, language)}`}{' '}
        <span className="soft small">{t('last.at-fastener')}</span>
      </span>
      {last.judgement.reasons.map((reason) => (
        <span key={`${reason.code} ${reason.quantity ?? ''}`} className="last-reason">
          {sayReason(reason, language, unit)}
        </span>
      ))}
    </>
  );
}
