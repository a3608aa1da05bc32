import {
  type CalibrationState,
  calibrationState,
  careState,
  daysToCalibration,
  type Wrench,
} from '@clampwright/core/wrench';
import { useTranslation } from 'react-i18next';
import { type StateKind, StateWord } from '../parts/state-word.tsx';

export const STATE_KINDS = {
  never: 'bad',
  off: 'bad',
  overdue: 'bad',
  soon: 'soon',
  valid: 'good',
} as const satisfies Record<CalibrationState, StateKind>;

interface CalibrationWordProps {
  readonly wrench: Wrench;
  readonly today: string;
  /** Since it was calibrated; left out while nobody has counted them. */
  readonly pullsSince?: number | undefined;
}

/** Where a wrench stands in its calibration by day and pulls, told by sign, word and colour. */
export function CalibrationWord({ wrench, today, pullsSince = 0 }: CalibrationWordProps) {
  const { t } = useTranslation('lead');
  const state = careState(wrench, today, pullsSince);
  const isByPulls = state !== calibrationState(wrench, today);
  const days = Math.abs(daysToCalibration(wrench, today) ?? 0);
  return (
    <StateWord kind={STATE_KINDS[state]}>
      {isByPulls && (state === 'overdue' || state === 'soon')
        ? t(`wrenches.by-pulls-${state}`)
        : t(`wrenches.state-${state}`, { count: days })}
    </StateWord>
  );
}
