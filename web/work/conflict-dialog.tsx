import { showAngle, showTorque, type TorqueUnit } from '@clampwright/core/quantity';
import { useTranslation } from 'react-i18next';
import { useLanguage } from '../app/language.ts';
import { Button } from '../parts/button.tsx';
import { Dialog, DialogActions } from '../parts/dialog.tsx';
import { VerdictBadge } from '../parts/verdict-badge.tsx';
import type { PullSender, Sending } from './use-pull-sender.ts';

interface ConflictDialogProps {
  readonly sending: Extract<Sending, { kind: 'clash' }>;
  readonly sender: PullSender;
  readonly unit: TorqueUnit;
}

/** Somebody else recorded this position meanwhile: shows theirs, and lets the technician choose. */
export function ConflictDialog({ sending, sender, unit }: ConflictDialogProps) {
  const { t } = useTranslation();
  const language = useLanguage();
  const { pull, clash } = sending;
  const { last } = clash;
  return (
    <Dialog title={t('clash.title', { position: pull.position ?? '' })} role="alertdialog" onClose={sender.drop}>
      {last ? (
        <p>
          {t('clash.theirs')} <strong>{showTorque(last.torqueNm, unit, language)}</strong>
          {last.angleDeg === undefined ? null : `, ${showAngle(last.angleDeg, language)}`}{' '}
          <VerdictBadge verdict={last.verdict} />
        </p>
      ) : null}
      <p>
        {t('clash.yours')}{' '}
        <strong>
          {pull.shown.torque.text} {pull.shown.torque.unit}
        </strong>
        {pull.shown.angle ? `, ${pull.shown.angle.text}°` : null}
      </p>
      <p>{t('clash.text')}</p>
      <DialogActions>
        <Button kind="primary" onPress={sender.drop}>
          {t('clash.drop')}
        </Button>
        <Button onPress={() => sender.send({ ...pull, attempt: clash.attemptCount + 1 })}>
          {t('clash.record', { attempt: clash.attemptCount + 1 })}
        </Button>
      </DialogActions>
    </Dialog>
  );
}
