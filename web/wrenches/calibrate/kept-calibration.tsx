import type { Calibration } from '@clampwright/core/wrench';
import { Link } from '@tanstack/react-router';
import { useTranslation } from 'react-i18next';
import { Notice } from '../../parts/notice.tsx';
import { Sheet } from '../../parts/sheet.tsx';
import { CertificateLinks } from '../certificate-links.tsx';
import { OpenRecall } from '../open-recall.tsx';

interface KeptCalibrationProps {
  readonly calibration: Calibration;
  readonly isFoundGood: boolean;
}

/** A calibration that was kept: its certificate, and the recall where it was found off. */
export function KeptCalibration({ calibration, isFoundGood }: KeptCalibrationProps) {
  const { t } = useTranslation('lead');
  return (
    <Sheet title={t('care.certificate', { number: calibration.certificate })}>
      <Notice kind="plain" title={t('care.kept')} isLive>
        <CertificateLinks calibrationId={calibration.id} number={calibration.certificate} />
      </Notice>
      {isFoundGood ? null : (
        <Notice kind="caution" title={t('care.was-off')}>
          <OpenRecall calibration={calibration} isFoundGood={false} />
        </Notice>
      )}
      <p>
        <Link to="/wrenches/$wrenchId" params={{ wrenchId: calibration.wrenchId }}>
          {t('care.history')}
        </Link>
      </p>
    </Sheet>
  );
}
