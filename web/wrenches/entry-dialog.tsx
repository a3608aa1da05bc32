import { type FormEvent, type ReactNode, useState } from 'react';
import { useTranslation } from 'react-i18next';
import { useWho } from '../app/who.tsx';
import type { Fault } from '../forms/fault.ts';
import { FaultsProvider } from '../forms/faults.tsx';
import { Button } from '../parts/button.tsx';
import { Dialog, DialogActions } from '../parts/dialog.tsx';
import { Trouble } from '../parts/states.tsx';
import { type ToolboxEntry, useToolboxEntry } from './toolbox.ts';

interface EntryDialogProps {
  readonly title: string;
  readonly action: string;
  readonly faults: readonly Fault[];
  /** Undefined while something is missing or wrong. */
  readonly entry: ToolboxEntry | undefined;
  readonly onClose: () => void;
  readonly children: ReactNode;
}

/** A form for the toolbox; closes itself once it was kept. */
export function EntryDialog({ title, action, faults, entry, onClose, children }: EntryDialogProps) {
  const { t } = useTranslation();
  const who = useWho();
  const sending = useToolboxEntry();
  const [isAskedFor, setAskedFor] = useState(false);
  const submit = async (event: FormEvent) => {
    event.preventDefault();
    setAskedFor(true);
    if (entry && (await who.ask())) sending.mutate(entry, { onSuccess: onClose });
  };
  return (
    <Dialog title={title} size="wide" onClose={onClose}>
      <FaultsProvider faults={faults} isAskedFor={isAskedFor}>
        <form onSubmit={(event) => void submit(event)}>
          {children}
          {sending.isError ? <Trouble error={sending.error} /> : null}
          <DialogActions>
            <Button kind="primary" type="submit" isDisabled={sending.isPending}>
              {action}
            </Button>
            <Button onPress={onClose}>{t('act.cancel')}</Button>
          </DialogActions>
        </form>
      </FaultsProvider>
    </Dialog>
  );
}
