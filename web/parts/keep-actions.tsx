import { useTranslation } from 'react-i18next';
import { Button } from './button.tsx';
import { DialogActions } from './dialog.tsx';
import { Trouble } from './states.tsx';

interface KeepActionsProps {
  /** What keeping is called here. */
  readonly action: string;
  readonly sending: { readonly isPending: boolean; readonly error: Error | null };
  /** Left out where there is nothing to go back from. */
  readonly onCancel?: (() => void) | undefined;
  /** Whether there is enough to keep; a form that tells its own faults needs nothing here. */
  readonly isReady?: boolean;
}

/** The foot of a form in a dialog: what stood against keeping it, keep, cancel. */
export function KeepActions({ action, sending, onCancel, isReady = true }: KeepActionsProps) {
  const { t } = useTranslation();
  return (
    <>
      {sending.error ? <Trouble error={sending.error} /> : null}
      <DialogActions>
        <Button kind="primary" type="submit" isDisabled={!isReady || sending.isPending}>
          {action}
        </Button>
        {onCancel ? <Button onPress={onCancel}>{t('act.cancel')}</Button> : null}
      </DialogActions>
    </>
  );
}
