import type { ReactNode } from 'react';
import { useTranslation } from 'react-i18next';
import { Button } from './button.tsx';
import { Dialog, DialogActions } from './dialog.tsx';

interface ConfirmDialogProps {
  readonly title: string;
  readonly children: ReactNode;
  /** What will be done, as a verb. */
  readonly action: string;
  readonly isGrave?: boolean;
  readonly isBusy?: boolean;
  readonly onConfirm: () => void;
  readonly onClose: () => void;
}

/** Asks once more before something that cannot be taken back. */
export function ConfirmDialog(props: ConfirmDialogProps) {
  const { t } = useTranslation();
  return (
    <Dialog title={props.title} role="alertdialog" onClose={props.onClose}>
      {props.children}
      <DialogActions>
        <Button kind={props.isGrave ? 'grave' : 'primary'} isDisabled={props.isBusy ?? false} onPress={props.onConfirm}>
          {props.action}
        </Button>
        <Button onPress={props.onClose}>{t('act.cancel')}</Button>
      </DialogActions>
    </Dialog>
  );
}
