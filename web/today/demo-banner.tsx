import { useQuery } from '@tanstack/react-query';
import { lazy, Suspense, useState } from 'react';
import { useTranslation } from 'react-i18next';
import { sessionQuery } from '../app/session.ts';
import { Button } from '../parts/button.tsx';
import { Notice } from '../parts/notice.tsx';

const RemoveDemoDialog = lazy(() => import('./remove-demo-dialog.tsx'));

/** Says that what is shown is invented, and takes it away when asked. */
export function DemoBanner() {
  const { t } = useTranslation();
  const session = useQuery(sessionQuery);
  const [isAsking, setAsking] = useState(false);
  if (!session.data?.demoLoaded) return null;
  return (
    <Notice kind="demo" title={t('demo.title')}>
      <p>{t('demo.text')}</p>
      <Button onPress={() => setAsking(true)}>{t('demo.remove')}</Button>
      {isAsking ? (
        <Suspense>
          <RemoveDemoDialog onClose={() => setAsking(false)} />
        </Suspense>
      ) : null}
    </Notice>
  );
}
