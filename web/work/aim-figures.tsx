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
  const isTurned = props.step.kind === 'angle';
  const torque = <TorqueAim key="torque" {...props} isSecond={isTurned} />;
  const angle = <AngleAim key="angle" {...props} />;
  return <div className="aim-figures">{isTurned ? [angle, torque] : [torque, angle]}</div>;
}

interface TorqueAimProps extends AimFiguresProps {
  /** Watched, but not what ends the pull: shown smaller. */
  readonly isSecond: boolean;
}

interface FigureProps {
  readonly isSecond?: boolean;
  readonly label: string;
  readonly figure: string;
  readonly unit?: string;
  readonly limits?: string;
  readonly children?: ReactNode;
}

const Figure = ({ isSecond = false, label, figure, unit, limits, children }: FigureProps) => (
  <div className={isSecond ? 'aim-figure aim-second' : 'aim-figure'}>
    <p className="aim-label">{label}</p>
    <p className="aim-value">
      <span className="aim-digits">{figure}</span>
      {unit ? <span className="aim-unit">{unit}</span> : null}
    </p>
    {limits ? <p className="aim-limits">{limits}</p> : null}
    {children}
  </div>
);

function TorqueAim({ aim, step, tool, unit, isSecond }: TorqueAimProps) {
  const { t } = useTranslation();
  const language = useLanguage();
  if (!aim.torque || !step.torque) return null;
  const show = (torqueNm: number) => showTorque(torqueNm, unit, language);
  const limits = t('aim.limits', { lower: show(aim.torque.lowerNm), upper: show(aim.torque.upperNm) });
  if (isSecond) return <Figure isSecond label={t('aim.torque-ends')} figure={limits} />;
  return (
    <Figure
      label={t('aim.torque')}
      figure={showTorqueFigure(aim.torque.settingNm, unit, language)}
      unit={unit}
      limits={limits}
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
      figure={show(aim.angle.turnDeg)}
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
