import { useQuery } from '@tanstack/react-query';
import { Link, useParams } from '@tanstack/react-router';
import { useTranslation } from 'react-i18next';
import { PageHeader } from '../parts/page-header.tsx';
import { Loading, Trouble } from '../parts/states.tsx';
import { careQuery } from './care-query.ts';
import { WrenchCareSheets } from './wrench-care-sheets.tsx';
import './wrenches.css';

/** One wrench: where it stands, its history, checks, certificates, recalls. */
export default function WrenchPlace() {
  const { t } = useTranslation('lead');
  const { wrenchId } = useParams({ from: '/wrenches/$wrenchId' });
  const care = useQuery(careQuery(wrenchId));
  return (
    <>
      <PageHeader
        title={care.data?.wrench.name ?? t('wrenches.title')}
        text={care.data ? t('wrenches.serial', { serial: care.data.wrench.serial }) : undefined}
        above={<Link to="/wrenches">{t('care.all-wrenches')}</Link>}
      />
      {care.isPending ? <Loading /> : null}
      {care.isError ? <Trouble error={care.error} onRetry={() => void care.refetch()} /> : null}
      {care.data ? <WrenchCareSheets care={care.data} /> : null}
    </>
  );
}
