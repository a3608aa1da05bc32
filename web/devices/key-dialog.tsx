import { useTranslation } from 'react-i18next';
import { CopyButton } from '../parts/copy-button.tsx';
import { Dialog, DialogActions } from '../parts/dialog.tsx';

interface KeyDialogProps {
  readonly name: string;
  readonly secret: string;
  readonly onClose: () => void;
}

/** Shows a key the one time that it is shown. */
export function KeyDialog({ name, secret, onClose }: KeyDialogProps) {
  const { t } = useTranslation('lead');
  return (
    <Dialog title={t('devices.key-title', { name })} size="wide" onClose={onClose}>
      <p>{t('devices.key-once')}</p>
      <p>
        <code className="device-key">{secret}</code>
      </p>
      <DialogActions>
        <CopyButton text={() => secret}>{t('devices.key-copy')}</CopyButton>
      </DialogActions>
    </Dialog>
  );
}
