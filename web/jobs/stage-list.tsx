import type { JointContent } from '@clampwright/core/joint';
import { say, sayStage } from '@clampwright/core/language';
import type { Stage } from '@clampwright/core/procedure';
import { showAngle, showNumber, showTorque } from '@clampwright/core/quantity';
import type { ReactNode } from 'react';
import { useTranslation } from 'react-i18next';
import { useLanguage } from '../app/language.ts';

/** The stages of a joint in their order, with windows, rounds and orders. */
export const StageList = ({ content }: { readonly content: JointContent }) => (
  <ol className="job-stages">
    {content.stages.map((stage, index) => (
      // oxlint-disable-next-line react/no-array-index-key -- a stage is known by its number
      <StageLine key={index} number={index + 1} stage={stage} unit={content.torqueUnit} />
    ))}
  </ol>
);

interface StageLineProps {
  readonly number: number;
  readonly stage: Stage;
  readonly unit: JointContent['torqueUnit'];
}

function StageLine({ number, stage, unit }: StageLineProps) {
  const { t } = useTranslation();
  const language = useLanguage();
  const { torque, angle, rounds } = stage;
  const showNm = (torqueNm: number) => showTorque(torqueNm, unit, language);
  const showDeg = (angleDeg: number) => showAngle(angleDeg, language);
  return (
    <li className="job-stage">
      <h3 className="stage-name">{t('stage.named', { number, kind: sayStage(stage.kind, language) })}</h3>
      <dl className="stage-facts">
        {torque ? (
          <Fact label={t('stage.torque')}>
            <strong>{showNm(torque.targetNm)}</strong>{' '}
            {t('stage.limits', { lower: showNm(torque.lowerNm), upper: showNm(torque.upperNm) })}
          </Fact>
        ) : null}
        {angle ? (
          <Fact label={t('stage.angle')}>
            <strong>{showDeg(angle.targetDeg)}</strong>{' '}
            {t('stage.limits', { lower: showDeg(angle.lowerDeg), upper: showDeg(angle.upperDeg) })}
            {stage.angleFromNm === undefined
              ? null
              : `, ${t('stage.angle-from', { torque: showNm(stage.angleFromNm) })}`}
            {stage.speedLimitDegPerS === undefined
              ? null
              : `, ${t('stage.speed', { speed: `${showDeg(stage.speedLimitDegPerS)}/s` })}`}
          </Fact>
        ) : null}
        <Fact label={t('stage.rounds')}>
          {rounds
            .map(({ share, order, positionShares, closing }, index) => {
              const words = say(language, `order.${order.method}`);
              const percent = showNumber(Math.round(share * 1e6) / 1e4, language);
              const said =
                share === 1
                  ? t('stage.round', { number: index + 1, order: words })
                  : t('stage.round-share', { number: index + 1, order: words, percent });
              const more = [
                ...(positionShares ? [t('stage.by-position')] : []),
                ...(closing ? [t('stage.closing')] : []),
              ];
              return [said, ...more].join(', ');
            })
            .join('; ')}
        </Fact>
      </dl>
    </li>
  );
}

const Fact = ({ label, children }: { readonly label: string; readonly children: ReactNode }) => (
  <div>
    <dt className="soft small">{label}</dt>
    <dd>{children}</dd>
  </div>
);
