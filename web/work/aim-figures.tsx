import type { Step, StepAim } from '@clampwright/core/procedure';
import { showAngle, showNumber, showTorque, showTorqueFigure, type TorqueUnit } from '@clampwright/core/quantity';
import type { Tool } from '@clampwright/core/wrench';
import type { ReactNode } from 'react';
import { useTranslation } from 'react-i18next';
import { useLanguage } from '../app/language.ts';

interface AimFiguresProps {
  readonly aim: StepAim;
  readonly step: Step;
  readonly tool: Tool;
  readonly unit: TorqueUnit;
  /** Turned in earlier attempts that are carried on, degrees. */
  readonly carriedDeg: number;
}

/** Torque and angle as the wrench must show them; the one that ends the pull stands first. */
export function AimFigures(props: AimFiguresProps) {
  const torque = <TorqueAim key="torque" {...props} />;
  const angle = <AngleAim key="angle" {...props} />;
  return <div className="aim-figures">{props.step.kind === 'angle' ? [angle, torque] : [torque, angle]}</div>;
}

interface FigureProps {
  readonly label: string;
  readonly figure: string;
  readonly unit: string;
  readonly limits: string;
  readonly children?: ReactNode;
}

const Figure = ({ label, figure, unit, limits, children }: FigureProps) => (
  <div className="aim-figure">
    <p className="aim-label">{label}</p>
    <p className="aim-value">
      <span className="aim-digits">{figure}</span>
      <span className="aim-unit">{unit}</span>
    </p>
    <p className="aim-limits">{limits}</p>
    {children}
  </div>
);

function TorqueAim({ aim, step, tool, unit }: AimFiguresProps) {
  const { t } = useTranslation();
  const language = useLanguage();
  if (!aim.torque || !step.torque) return null;
  const show = (torqueNm: number) => showTorque(torqueNm, unit, language);
  return (
    <Figure
      label={t('aim.torque')}
      figure={showTorqueFigure(aim.torque.settingNm, unit, language)}
      unit={unit}
      limits={t('aim.limits', { lower: show(aim.torque.lowerNm), upper: show(aim.torque.upperNm) })}
    >
      {tool.adapter ? (
        <p className="aim-note">
          {t('aim.adapter', {
            length: showNumber(tool.adapter.lengthMm, language),
            angle: showNumber(tool.adapter.angleDeg, language),
            torque: show(step.torque.targetNm),
          })}
        </p>
      ) : null}
      {tool.extension ? <p className="aim-note">{t('aim.extension', { name: tool.extension.name })}</p> : null}
    </Figure>
  );
}

function AngleAim({ aim, step, tool, unit, carriedDeg }: AimFiguresProps) {
  const { t } = useTranslation();
  const language = useLanguage();
  if (!aim.angle) return null;
  const show = (angleDeg: number) => showAngle(angleDeg, language);
  return (
    <Figure
      label={
        aim.angleFromNm === undefined
          ? t('aim.angle')
          : t('aim.angle-from', { torque: showTorque(aim.angleFromNm, unit, language) })
      }
      figure={showNumber(aim.angle.turnDeg, language, { decimals: Number.isInteger(aim.angle.turnDeg) ? 0 : 1 })}
      unit="°"
      limits={t('aim.limits', { lower: show(aim.angle.lowerDeg), upper: show(aim.angle.upperDeg) })}
    >
      {carriedDeg > 0 ? <p className="aim-note">{t('aim.carried', { angle: show(carriedDeg) })}</p> : null}
      {tool.extension && aim.angle.windUpDeg === 0 ? <p className="aim-note">{t('aim.wind-up-later')}</p> : null}
      {aim.angle.windUpDeg > 0 ? (
        <p className="aim-note">{t('aim.wind-up', { angle: show(aim.angle.windUpDeg) })}</p>
      ) : null}
      {step.speedLimitDegPerS === undefined ? null : (
        <p className="aim-note">{t('aim.speed', { speed: `${show(step.speedLimitDegPerS)}/s` })}</p>
      )}
    </Figure>
  );
}
