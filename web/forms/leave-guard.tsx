import { useBlocker } from '@tanstack/react-router';
import { useTranslation } from 'react-i18next';
import { ConfirmDialog } from '../parts/confirm-dialog.tsx';

/** Asks before what was typed and not kept is lost: on another place as on closing the page. */
export function LeaveGuard({ isDirty }: { readonly isDirty: boolean }) {
  const { t } = useTranslation('lead');
  const leave = useBlocker({
    shouldBlockFn: ({ current, next }) => isDirty && current.pathname !== next.pathname,
    enableBeforeUnload: isDirty,
    withResolver: true,
  });
  if (leave.status !== 'blocked') return null;
  return (
    <ConfirmDialog
      isGrave
      title={t('leave.title')}
      action={t('leave.leave')}
      onConfirm={() => leave.proceed()}
      onClose={() => leave.reset()}
    >
      <p>{t('leave.text')}</p>
    </ConfirmDialog>
  );
}
