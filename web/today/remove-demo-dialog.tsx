import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useTranslation } from 'react-i18next';
import { anything, send } from '../app/api.ts';
import { ConfirmDialog } from '../parts/confirm-dialog.tsx';
import { Trouble } from '../parts/states.tsx';

/** Asks once more, then removes everything that is invented. */
export default function RemoveDemoDialog({ onClose }: { readonly onClose: () => void }) {
  const { t } = useTranslation();
  const queries = useQueryClient();
  const remove = useMutation({
    mutationFn: () => send('DELETE', '/demo', undefined, anything),
    onSuccess: async () => {
      await queries.invalidateQueries();
      onClose();
    },
  });
  return (
    <ConfirmDialog
      title={t('demo.confirm')}
      action={t('demo.remove')}
      isGrave
      isBusy={remove.isPending}
      onConfirm={() => remove.mutate()}
      onClose={onClose}
    >
      <p>{t('demo.confirm-text')}</p>
      {remove.isError ? <Trouble error={remove.error} /> : null}
    </ConfirmDialog>
  );
}
