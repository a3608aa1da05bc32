import { useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import { anything, send } from '../app/api.ts';
import { sessionQuery } from '../app/session.ts';
import { Button } from '../parts/button.tsx';
import { ConfirmDialog } from '../parts/confirm-dialog.tsx';
import { Notice } from '../parts/notice.tsx';
import { Trouble } from '../parts/states.tsx';

/** Says that what is shown is invented, and takes it away when asked. */
export function DemoBanner() {
  const { t } = useTranslation();
  const session = useQuery(sessionQuery);
  const queries = useQueryClient();
  const [isAsking, setAsking] = useState(false);
  const remove = useMutation({
    mutationFn: () => send('DELETE', '/demo', undefined, anything),
    onSuccess: () => queries.invalidateQueries(),
    onSettled: () => setAsking(false),
  });
  if (!session.data?.demoLoaded) return null;
  return (
    <Notice kind="demo" title={t('demo.title')}>
      <p>{t('demo.text')}</p>
      <Button onPress={() => setAsking(true)}>{t('demo.remove')}</Button>
      {remove.isError ? <Trouble error={remove.error} /> : null}
      {isAsking ? (
        <ConfirmDialog
          title={t('demo.confirm')}
          action={t('demo.remove')}
          isGrave
          isBusy={remove.isPending}
          onConfirm={() => remove.mutate()}
          onClose={() => setAsking(false)}
        >
          <p>{t('demo.confirm-text')}</p>
        </ConfirmDialog>
      ) : null}
    </Notice>
  );
}
