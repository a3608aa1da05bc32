import type { JointContent } from '@clampwright/core/joint';
import { say, sayStage } from '@clampwright/core/language';
import { positionsInOrder } from '@clampwright/core/layout';
import type { Round, Stage, TypedWindow } from '@clampwright/core/procedure';
import { showAngle, showNumber, showTorque } from '@clampwright/core/quantity';
import { sayTyped } from '@clampwright/core/record';
import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import { useLanguage } from '../app/language.ts';
import { Button } from '../parts/button.tsx';
import { OrderDrawing } from './order-drawing.tsx';
import { useAngleWindowWords, useTorqueWindowWords } from './window-words.ts';

interface StageSheetProps {
  readonly stage: Stage;
  readonly number: number;
  readonly content: JointContent;
}

/** One stage to be read: its windows as understood and as typed, its rounds. */
export function StageSheet({ stage, number, content }: StageSheetProps) {
  const { t } = useTranslation('lead');
  const language = useLanguage();
  const torqueWords = useTorqueWindowWords();
  const angleWords = useAngleWindowWords();
  const { torque, angle, angleFromNm, speedLimitDegPerS } = stage;
  return (
    <section className="stage">
      <h3 className="stage-number">{t('stage.heading', { number, kind: sayStage(stage.kind, language) })}</h3>
      <ul className="windows">
        {torque ? (
          <li>
            <span className="window-figure">{torqueWords(torque, content.torqueUnit)}</span>{' '}
            <TypedAs typed={torque.typed} />
          </li>
        ) : null}
        {angle ? (
          <li>
            <span className="window-figure">{angleWords(angle)}</span> <TypedAs typed={angle.typed} />
          </li>
        ) : null}
        {angleFromNm === undefined ? null : (
          <li>
            {say(language, 'record.angle-from', { torque: showTorque(angleFromNm, content.torqueUnit, language) })}
          </li>
        )}
        {speedLimitDegPerS === undefined ? null : (
          <li>{say(language, 'record.speed-limit', { speed: `${showAngle(speedLimitDegPerS, language)}/s` })}</li>
        )}
      </ul>
      <ol className="rounds">
        {stage.rounds.map((round, index) => (
          <RoundSheet key={index} number={index + 1} round={round} content={content} />
        ))}
      </ol>
    </section>
  );
}

function TypedAs({ typed }: { readonly typed: TypedWindow }) {
  const { t } = useTranslation('lead');
  const language = useLanguage();
  return <span className="soft">{t('window.typed', { typed: sayTyped(typed, language) })}</span>;
}

interface RoundSheetProps {
  readonly number: number;
  readonly round: Round;
  readonly content: JointContent;
}

function RoundSheet({ number, round, content }: RoundSheetProps) {
  const { t } = useTranslation('lead');
  const language = useLanguage();
  const [isDrawn, setDrawn] = useState(false);
  const order = positionsInOrder(content.layout, round.order);
  return (
    <li className="round">
      <p>
        {t('round.said', {
          number,
          share: showNumber(Math.round(round.share * 1e6) / 1e4, language),
          order: say(language, `order.${round.order.method}`),
        })}
      </p>
      {round.positionShares ? (
        <p className="position-shares" aria-label={t('round.targets-shown')}>
          {round.positionShares
            .map((own, index) => `${index + 1}:\u00a0${showNumber(own * 100, language, { decimals: 1 })}\u00a0%`)
            .join('; ')}
        </p>
      ) : null}
      {round.closing ? <p>{t('round.closing-said', { limit: showAngle(round.closing.stillDeg, language) })}</p> : null}
      {order.ok ? (
        <>
          <p className="sequence">{order.value.join(' ')}</p>
          <Button kind="quiet" onPress={() => setDrawn(!isDrawn)}>
            {isDrawn ? t('round.hide-drawing') : t('round.show-drawing')}
          </Button>
          {isDrawn ? <OrderDrawing layout={content.layout} order={order.value} /> : null}
        </>
      ) : null}
    </li>
  );
}
