import { useQuery } from '@tanstack/react-query';
import { useTranslation } from 'react-i18next';
import { peopleQuery, sessionQuery } from '../app/session.ts';
import { Notice } from '../parts/notice.tsx';
import { PageHeader } from '../parts/page-header.tsx';
import { Loading, Trouble } from '../parts/states.tsx';
import { UsualCautions } from '../parts/usual-cautions.tsx';
import { DemoBanner } from '../today/demo-banner.tsx';
import { About } from './about.tsx';
import { DeviceSettings } from './device-settings.tsx';
import { People } from './people.tsx';
import './workshop.css';

/** The people, this device, and what Clampwright is. */
export default function WorkshopPlace() {
  const { t } = useTranslation('lead');
  const session = useQuery(sessionQuery);
  const people = useQuery(peopleQuery);
  const error = session.error ?? people.error;
  return (
    <>
      <PageHeader title={t('workshop.title')} text={t('workshop.text')} />
      {error ? <Trouble error={error} onRetry={() => void people.refetch()} /> : null}
      {session.data?.firstStart ? (
        <Notice kind="plain" title={t('workshop.first-start')}>
          <p>{t('workshop.first-start-text')}</p>
        </Notice>
      ) : null}
      <DemoBanner />
      <DeviceSettings />
      {people.data && session.data ? <People people={people.data} me={session.data.person} /> : null}
      {people.isPending ? <Loading /> : null}
      <UsualCautions />
      <About demoLoaded={session.data?.demoLoaded ?? false} />
    </>
  );
}
