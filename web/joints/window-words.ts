import type { AngleWindow, TorqueWindow } from '@clampwright/core/procedure';
import { showAngle, showTorqueFigure, type TorqueUnit } from '@clampwright/core/quantity';
import { useTranslation } from 'react-i18next';
import { useLanguage } from '../app/language.ts';

/** Says a torque window in the unit of the work. */
export function useTorqueWindowWords(): (window: TorqueWindow, unit: TorqueUnit) => string {
  const { t } = useTranslation('lead');
  const language = useLanguage();
  return ({ lowerNm, targetNm, upperNm }, unit) => {
    const figure = (torqueNm: number) => showTorqueFigure(torqueNm, unit, language);
    return t('window.understood', { lower: figure(lowerNm), target: figure(targetNm), upper: figure(upperNm), unit });
  };
}

/** Says an angle window in degrees. */
export function useAngleWindowWords(): (window: AngleWindow) => string {
  const { t } = useTranslation('lead');
  const language = useLanguage();
  return ({ lowerDeg, targetDeg, upperDeg }) =>
    t('window.understood-angle', {
      lower: showAngle(lowerDeg, language),
      target: showAngle(targetDeg, language),
      upper: showAngle(upperDeg, language),
    });
}
