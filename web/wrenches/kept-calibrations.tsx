import { type Calibration, type CalibrationSummary, judgeComparison, type Wrench } from '@clampwright/core/wrench';
import type { WrenchCare } from '@clampwright/server/contract';
import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import { useLanguage } from '../app/language.ts';
import { Button } from '../parts/button.tsx';
import { showDate } from '../parts/dates.ts';
import { Dialog } from '../parts/dialog.tsx';
import { Ledger, LedgerRow } from '../parts/ledger.tsx';
import { Sheet } from '../parts/sheet.tsx';
import { StateWord } from '../parts/state-word.tsx';
import { EmptyState } from '../parts/states.tsx';
import { CertificateLinks } from './certificate-links.tsx';
import { OpenRecall } from './open-recall.tsx';

interface KeptCalibrationsProps {
  readonly care: WrenchCare;
  readonly mayRecall: boolean;
}

/** Every calibration with its certificate, the newest first, and the recalls that came of them. */
export function KeptCalibrations({ care, mayRecall }: KeptCalibrationsProps) {
  const { t } = useTranslation('lead');
  const [recalling, setRecalling] = useState<Calibration>();
  const newest = care.summaries.toSorted((a, b) => (a.calibratedOn < b.calibratedOn ? 1 : -1));
  return (
    <Sheet title={t('care.calibrations')}>
      {newest.length === 0 ? (
        <EmptyState title={t('wrenches.state-never')} text={t('care.history-none-text')} />
      ) : (
        <Ledger label={t('care.calibrations')}>
          {newest.map((summary) => (
            <CalibrationRow
              key={`${summary.certificate} ${summary.calibratedOn}`}
              summary={summary}
              care={care}
              onRecall={mayRecall ? setRecalling : undefined}
            />
          ))}
        </Ledger>
      )}
      {recalling ? (
        <Dialog title={t('care.open-recall')} onClose={() => setRecalling(undefined)}>
          <OpenRecall
            calibration={recalling}
            isFoundGood={isFoundGood(recalling, care.wrench)}
            onCancel={() => setRecalling(undefined)}
          />
        </Dialog>
      ) : null}
    </Sheet>
  );
}

interface CalibrationRowProps {
  readonly summary: CalibrationSummary;
  readonly care: WrenchCare;
  readonly onRecall: ((calibration: Calibration) => void) | undefined;
}

function CalibrationRow({ summary, care, onRecall }: CalibrationRowProps) {
  const { t } = useTranslation('lead');
  const language = useLanguage();
  const whole = care.calibrations.find(({ id }) => id === summary.calibrationId);
  const isGood = whole === undefined || isFoundGood(whole, care.wrench);
  const recall = care.recalls.find(({ cause }) => cause.kind === 'found-off' && cause.calibrationId === whole?.id);
  return (
    <LedgerRow
      title={t('care.certificate', { number: summary.certificate })}
      facts={[
        showDate(summary.calibratedOn, language),
        summary.by,
        t('care.reference-due', { on: showDate(summary.dueOn, language) }),
        ...(whole
          ? [<CertificateLinks key="links" calibrationId={whole.id} number={summary.certificate} />]
          : [t('care.certificate-paper')]),
      ]}
      state={
        whole ? (
          <StateWord kind={isGood ? 'good' : 'bad'}>
            {[
              t(isGood ? 'care.found-good' : 'care.found-off'),
              ...(whole.asLeft ? [t(summary.conforms === false ? 'care.left-off' : 'care.left-good')] : []),
            ].join(', ')}
          </StateWord>
        ) : null
      }
      side={
        recall ? (
          <Link className="link-alone" to="/recalls/$recallId" params={{ recallId: recall.id }}>
            {t('care.recalls')}
          </Link>
        ) : whole && onRecall ? (
          <Button kind={isGood ? 'quiet' : 'primary'} onPress={() => onRecall(whole)}>
            {t(isGood ? 'care.was-dropped' : 'care.open-recall')}
          </Button>
        ) : null
      }
    />
  );
}

function isFoundGood(calibration: Calibration, wrench: Wrench): boolean {
  const judged = judgeComparison(calibration.asFound, wrench, calibration, 'asFound');
  return judged.ok && judged.value.every(({ evaluated }) => evaluated.conforms);
}
