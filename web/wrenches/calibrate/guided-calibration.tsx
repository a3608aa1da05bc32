import { calibrationPlan, type ReferenceStandard, type Wrench } from '@clampwright/core/wrench';
import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import { Notice } from '../../parts/notice.tsx';
import { BetweenRuns } from './between-runs.tsx';
import { FinishSheet } from './finish-sheet.tsx';
import { forgetSession, keepSession, keptSession } from './kept-session.ts';
import { blankSession } from './new-session.ts';
import { RunSheet } from './run-sheet.tsx';
import type { CalibrationSession } from './session.ts';
import { SetUpSheet } from './set-up-sheet.tsx';

interface GuidedCalibrationProps {
  readonly wrench: Wrench;
  readonly references: readonly ReferenceStandard[];
}

/** The screens of a calibration; every act is kept on this device before the next one is asked for. */
export function GuidedCalibration({ wrench, references }: GuidedCalibrationProps) {
  const { t } = useTranslation('lead');
  const [session, setSession] = useState(() => keptSession(wrench.id) ?? blankSession(wrench.id));
  const plan = calibrationPlan(wrench);
  const change = (next: CalibrationSession) => {
    keepSession(next);
    setSession(next);
  };
  if (!plan.ok) return <Notice kind="alarm" title={t('care.class-unknown', { class: wrench.class })} />;
  const reference = references.find(({ id }) => id === session.setUp.referenceId);
  const shared = { wrench, plan: plan.value, session, onChange: change };
  if (session.at === 'set-up' || !reference) {
    const drop = () => {
      forgetSession(wrench.id);
      setSession(blankSession(wrench.id));
    };
    return <SetUpSheet {...shared} references={references} onDrop={drop} />;
  }
  switch (session.at) {
    case 'found':
    case 'left':
      return <RunSheet key={session.at} {...shared} name={session.at} />;
    case 'between':
      return <BetweenRuns {...shared} reference={reference} />;
    case 'finish':
      return <FinishSheet {...shared} reference={reference} />;
  }
}
