import { showAngle, showTorque, type TorqueUnit } from '@clampwright/core/quantity';
import { useTranslation } from 'react-i18next';
import { useLanguage } from '../app/language.ts';
import type { LiveTorque } from './live.ts';

interface TorqueBarProps {
  /** As the wrench shows it. */
  readonly window: { readonly lowerNm: number; readonly settingNm: number; readonly upperNm: number };
  /** Absent: nothing is being pulled. */
  readonly live: LiveTorque | undefined;
  readonly unit: TorqueUnit;
}

const WIDTH = 1000;
/** The window's upper limit stands at this share of the bar. */
const UPPER_AT = 0.85;

/** The torque while the wrench is pulled, against its limits. */
export function TorqueBar({ window, live, unit }: TorqueBarProps) {
  const { t } = useTranslation();
  const language = useLanguage();
  const at = (torqueNm: number) => Math.min(WIDTH, (Math.max(0, torqueNm) / window.upperNm) * WIDTH * UPPER_AT);
  return (
    <div className="torque-bar">
      <svg viewBox={`0 0 ${WIDTH} 60`} preserveAspectRatio="none" aria-hidden="true">
        <rect x="0" y="0" width={WIDTH} height="60" className="torque-bar-ground" />
        <rect
          x={at(window.lowerNm)}
          y="0"
          width={at(window.upperNm) - at(window.lowerNm)}
          height="60"
          className="torque-bar-window"
        />
        <rect x="0" y="14" width={at(live?.torqueNm ?? 0)} height="32" className="torque-bar-live" />
        <path d={`M${at(window.settingNm)} 0 V60`} className="torque-bar-target" />
      </svg>
      <p className="soft">
        {live
          ? t('aim.live', {
              torque: showTorque(live.torqueNm, unit, language),
              angle: showAngle(live.angleDeg, language),
            })
          : t('aim.not-live')}
      </p>
    </div>
  );
}
