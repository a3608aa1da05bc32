import { aimOf, type Step } from '@clampwright/core/procedure';
import { showAngle, showNumber, type TorqueUnit } from '@clampwright/core/quantity';
import type { CellState } from '@clampwright/core/record';
import type { Tool } from '@clampwright/core/wrench';
import { useTranslation } from 'react-i18next';
import { useLanguage } from '../app/language.ts';
import { Button } from '../parts/button.tsx';
import { Notice } from '../parts/notice.tsx';
import { AimFigures } from './aim-figures.tsx';
import type { LiveTorque } from './live.ts';
import { TorqueBar } from './torque-bar.tsx';

interface AimPanelProps {
  readonly cell: CellState;
  /** As it holds for this position. */
  readonly step: Step;
  /** Whole torque of the stage, where it has one. */
  readonly wholeNm: number | undefined;
  readonly tool: Tool | undefined;
  readonly unit: TorqueUnit;
  /** What other wrenches pull at the same time. */
  readonly together: readonly number[];
  /** Picked by hand, not the next in the order. */
  readonly isPicked: boolean;
  readonly liveTorque: LiveTorque | undefined;
  readonly onBack: () => void;
}

/** The next position and the figure to aim at, as large as the screen allows. */
export function AimPanel({ cell, step, wholeNm, tool, unit, together, isPicked, liveTorque, onBack }: AimPanelProps) {
  const { t } = useTranslation();
  const language = useLanguage();
  const isToBePulled = cell.need === 'pull' || cell.need === 'nothing';
  const aim = tool && aimOf(step, tool, cell.carriedDeg);
  return (
    <section className="aim" aria-labelledby="aim-position">
      <div className="aim-head">
        <h2 id="aim-position" className="aim-position">
          {t(isPicked ? 'aim.picked' : 'aim.next')} <span className="aim-number">{cell.ref.position}</span>
        </h2>
        {isPicked ? <Button onPress={onBack}>{t('aim.back')}</Button> : null}
      </div>
      {step.kind === 'loosen' ? <p className="aim-loosen">{t('aim.loosen')}</p> : null}
      {tool?.adapter && aim?.ok === false ? (
        <Notice
          kind="alarm"
          title={t('objection.impossible-adapter', {
            length: showNumber(tool.adapter.lengthMm, language),
            angle: showAngle(tool.adapter.angleDeg, language),
          })}
        />
      ) : null}
      {tool && aim?.ok && isToBePulled ? (
        <AimFigures aim={aim.value} step={step} tool={tool} unit={unit} carriedDeg={cell.carriedDeg} />
      ) : null}
      {step.torques && step.torque && wholeNm && isToBePulled ? (
        <p className="aim-note">
          {t('aim.own-target', {
            percent: showNumber((100 * step.torque.targetNm) / wholeNm, language, { significant: 3 }),
          })}
        </p>
      ) : null}
      {together.length > 0 && isToBePulled ? (
        <p className="aim-note">{t('aim.together', { positions: together.join(', ') })}</p>
      ) : null}
      {aim?.ok && aim.value.torque && isToBePulled && tool?.wrench.connection.kind !== 'typed' ? (
        <TorqueBar window={aim.value.torque} live={liveTorque} unit={unit} />
      ) : null}
    </section>
  );
}
