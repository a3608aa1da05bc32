import { useTranslation } from 'react-i18next';
import { Button } from './button.tsx';
import { DialogActions } from './dialog.tsx';
import { Trouble } from './states.tsx';

interface KeepActionsProps {
  /** What keeping is called here. */
  readonly action: string;
  readonly sending: { readonly isPending: boolean; readonly error: Error | null };
  readonly onCancel: () => void;
}

/** The foot of a form in a dialog: what stood against keeping it, keep, cancel. */
export function KeepActions({ action, sending, onCancel }: KeepActionsProps) {
  const { t } = useTranslation();
  return (
    <>
      {sending.error ? <Trouble error={sending.error} /> : null}
      <DialogActions>
        <Button kind="primary" type="submit" isDisabled={sending.isPending}>
          {action}
        </Button>
        <Button onPress={onCancel}>{t('act.cancel')}</Button>
      </DialogActions>
    </>
  );
}
