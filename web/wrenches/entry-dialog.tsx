import { type FormEvent, type ReactNode, useState } from 'react';
import { useWho } from '../app/who.tsx';
import type { Fault } from '../forms/fault.ts';
import { FaultsProvider } from '../forms/faults.tsx';
import { Dialog } from '../parts/dialog.tsx';
import { KeepActions } from '../parts/keep-actions.tsx';
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
          <KeepActions action={action} sending={sending} onCancel={onClose} />
        </form>
      </FaultsProvider>
    </Dialog>
  );
}
