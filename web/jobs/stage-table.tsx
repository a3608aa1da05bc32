import type { JointContent } from '@clampwright/core/joint';
import { say, sayStage } from '@clampwright/core/language';
import type { Stage } from '@clampwright/core/procedure';
import { showAngle, showNumber, showTorque } from '@clampwright/core/quantity';
import { useTranslation } from 'react-i18next';
import { useLanguage } from '../app/language.ts';

/** The stages of a joint with their windows, rounds and orders. */
export function StageTable({ content }: { readonly content: JointContent }) {
  const { t } = useTranslation();
  return (
    <div className="table-frame">
      <table className="table">
        <thead>
          <tr>
            <th scope="col">{t('stage.stage')}</th>
            <th scope="col">{t('stage.torque')}</th>
            <th scope="col">{t('stage.angle')}</th>
            <th scope="col">{t('stage.rounds')}</th>
          </tr>
        </thead>
        <tbody>
          {content.stages.map((stage, index) => (
            <StageRow
              // oxlint-disable-next-line react/no-array-index-key -- a stage is known by its number
              key={index}
              number={index + 1}
              stage={stage}
              unit={content.torqueUnit}
            />
          ))}
        </tbody>
      </table>
    </div>
  );
}

interface StageRowProps {
  readonly number: number;
  readonly stage: Stage;
  readonly unit: JointContent['torqueUnit'];
}

function StageRow({ number, stage, unit }: StageRowProps) {
  const { t } = useTranslation();
  const language = useLanguage();
  const torque = (torqueNm: number) => showTorque(torqueNm, unit, language);
  const angle = (angleDeg: number) => showAngle(angleDeg, language);
  return (
    <tr>
      <th scope="row">{t('stage.named', { number, kind: sayStage(stage.kind, language) })}</th>
      <td>
        {stage.torque ? (
          <>
            <strong>{torque(stage.torque.targetNm)}</strong>{' '}
            {t('stage.limits', { lower: torque(stage.torque.lowerNm), upper: torque(stage.torque.upperNm) })}
          </>
        ) : (
          '–'
        )}
      </td>
      <td>
        {stage.angle ? (
          <>
            <strong>{angle(stage.angle.targetDeg)}</strong>{' '}
            {t('stage.limits', { lower: angle(stage.angle.lowerDeg), upper: angle(stage.angle.upperDeg) })}
            {stage.angleFromNm === undefined
              ? null
              : ` ${t('stage.angle-from', { torque: torque(stage.angleFromNm) })}`}
            {stage.speedLimitDegPerS === undefined
              ? null
              : ` ${t('stage.speed', { speed: `${angle(stage.speedLimitDegPerS)}/s` })}`}
          </>
        ) : (
          '–'
        )}
      </td>
      <td>
        {stage.rounds
          .map(({ share, order }, index) => {
            const words = say(language, `order.${order.method}`);
            const percent = showNumber(share * 100, language, { significant: 3 });
            return share === 1
              ? t('stage.round', { number: index + 1, order: words })
              : t('stage.round-share', { number: index + 1, order: words, percent });
          })
          .join('; ')}
      </td>
    </tr>
  );
}
