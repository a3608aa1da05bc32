import { useTranslation } from 'react-i18next';
import { useLanguage } from '../app/language.ts';

interface CertificateLinksProps {
  readonly calibrationId: string;
  readonly number: string;
}

/** The certificate on paper, as a page, and as a Digital Calibration Certificate. */
export function CertificateLinks({ calibrationId, number }: CertificateLinksProps) {
  const { t } = useTranslation('lead');
  const language = useLanguage();
  return (
    <span className="care-links">
      {(['pdf', 'html', 'xml'] as const).map((form) => (
        <a
          key={form}
          className="link-alone"
          href={`/api/v1/calibrations/${calibrationId}/certificate.${form}?language=${language}`}
          aria-label={`${t('care.certificate', { number })}, ${t(`care.certificate-${form}`)}`}
          {...(form === 'html' ? { target: '_blank', rel: 'noreferrer' } : { download: true })}
        >
          {t(`care.certificate-${form}`)}
        </a>
      ))}
    </span>
  );
}
