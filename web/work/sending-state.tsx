import type { TorqueUnit } from '@clampwright/core/quantity';
import type { IncomingPull } from '@clampwright/core/record';
import { useTranslation } from 'react-i18next';
import { NobodyActs } from '../jobs/use-command.ts';
import { Button } from '../parts/button.tsx';
import { Notice } from '../parts/notice.tsx';
import { Trouble, useTroubleWords } from '../parts/states.tsx';
import type { PullSender } from './use-pull-sender.ts';

interface SendingStateProps {
  readonly sender: PullSender;
  readonly unit: TorqueUnit;
}

/** Says whether the pull in hand is kept, and what can be done while it is not. */
export function SendingState({ sender, unit }: SendingStateProps) {
  const { t } = useTranslation();
  const wordsFor = useTroubleWords();
  const { sending } = sender;
  switch (sending.kind) {
    case 'idle':
    case 'clash':
      return null;
    case 'sending':
      return <output className="soft">{t('sending.now')}</output>;
    case 'refused':
      return <Trouble error={sending.error} />;
    case 'waiting': {
      const figure = shownFigure(sending.pull, unit);
      const place = { position: sending.pull.position ?? '', figure };
      const why = sending.error instanceof NobodyActs ? t('sending.nobody') : wordsFor(sending.error).title;
      return (
        <Notice kind="alarm" title={t('sending.waiting', place)} isLive>
          <p>{why}</p>
          <p>{t('sending.waiting-text')}</p>
          <div className="actions">
            <Button kind="primary" onPress={() => sender.send(sending.pull)}>
              {t('act.retry')}
            </Button>
            <Button kind="grave" onPress={sender.drop}>
              {t('sending.drop')}
            </Button>
          </div>
        </Notice>
      );
    }
  }
}

/** The figures of a pull as they were typed. */
function shownFigure({ shown }: IncomingPull, unit: TorqueUnit): string {
  const torque = `${shown.torque.text}\u00a0${shown.torque.unit || unit}`;
  return shown.angle ? `${torque}, ${shown.angle.text}°` : torque;
}
