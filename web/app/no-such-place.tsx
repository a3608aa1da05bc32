import { Link } from '@tanstack/react-router';
import { useTranslation } from 'react-i18next';
import { buttonClass } from '../parts/button.tsx';
import { PageHeader } from '../parts/page-header.tsx';

/** Said when an address leads nowhere. */
export function NoSuchPlace() {
  const { t } = useTranslation();
  return (
    <PageHeader title={t('shell.nowhere')} text={t('shell.nowhere-text')}>
      <Link to="/" className={buttonClass('primary')}>
        {t('shell.home')}
      </Link>
    </PageHeader>
  );
}
