import { type CalibrationState, calibrationState, daysToCalibration, type Wrench } from '@clampwright/core/wrench';
import { useTranslation } from 'react-i18next';
import { type StateKind, StateWord } from '../parts/state-word.tsx';

export const STATE_KINDS = {
  never: 'bad',
  off: 'bad',
  overdue: 'bad',
  soon: 'soon',
  valid: 'good',
} as const satisfies Record<CalibrationState, StateKind>;

/** Where a wrench stands in its calibration, by sign, word and colour. */
export function CalibrationWord({ wrench, today }: { readonly wrench: Wrench; readonly today: string }) {
  const { t } = useTranslation('lead');
  const state = calibrationState(wrench, today);
  const days = Math.abs(daysToCalibration(wrench, today) ?? 0);
  return <StateWord kind={STATE_KINDS[state]}>{t(`wrenches.state-${state}`, { count: days })}</StateWord>;
}
