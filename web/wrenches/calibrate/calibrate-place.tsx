import { useQuery } from '@tanstack/react-query';
import { Link, useParams } from '@tanstack/react-router';
import { useTranslation } from 'react-i18next';
import { PageHeader } from '../../parts/page-header.tsx';
import { Loading, Trouble } from '../../parts/states.tsx';
import { careQuery, referencesQuery } from '../care-query.ts';
import { GuidedCalibration } from './guided-calibration.tsx';
import './calibrate.css';

/** One wrench beside a reference, step by step, to its certificate. */
export default function CalibratePlace() {
  const { t } = useTranslation('lead');
  const { wrenchId } = useParams({ from: '/wrenches/$wrenchId/calibrate' });
  const care = useQuery(careQuery(wrenchId));
  const references = useQuery(referencesQuery);
  const trouble = care.error ?? references.error;
  return (
    <>
      <PageHeader
        title={t('care.calibrate')}
        text={care.data ? `${care.data.wrench.name}, ${care.data.wrench.serial}` : undefined}
        above={
          <Link to="/wrenches/$wrenchId" params={{ wrenchId }}>
            {care.data?.wrench.name ?? t('care.all-wrenches')}
          </Link>
        }
      />
      {care.isPending || references.isPending ? <Loading /> : null}
      {trouble ? <Trouble error={trouble} onRetry={() => void care.refetch()} /> : null}
      {care.data && references.data ? (
        <GuidedCalibration key={wrenchId} wrench={care.data.wrench} references={references.data} />
      ) : null}
    </>
  );
}
