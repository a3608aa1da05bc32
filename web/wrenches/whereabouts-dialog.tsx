import type { Wrench } from '@clampwright/core/wrench';
import { type FormEvent, useState } from 'react';
import { useTranslation } from 'react-i18next';
import { useWho } from '../app/who.tsx';
import { Dialog } from '../parts/dialog.tsx';
import { KeepActions } from '../parts/keep-actions.tsx';
import { TextField } from '../parts/text-field.tsx';
import { useCareEntry } from './use-care-entry.ts';

interface WhereaboutsDialogProps {
  readonly wrench: Wrench;
  readonly onClose: () => void;
}

/** Notes where a wrench is kept and who has it. */
export function WhereaboutsDialog({ wrench, onClose }: WhereaboutsDialogProps) {
  const { t } = useTranslation('lead');
  const who = useWho();
  const entry = useCareEntry();
  const [place, setPlace] = useState(wrench.place ?? '');
  const [heldBy, setHeldBy] = useState(wrench.heldBy ?? '');
  const keep = async (event: FormEvent) => {
    event.preventDefault();
    if (!(await who.ask())) return;
    const whereabouts = {
      ...(place.trim() === '' ? {} : { place: place.trim() }),
      ...(heldBy.trim() === '' ? {} : { heldBy: heldBy.trim() }),
    };
    entry.mutate({ kind: 'whereabouts', wrenchId: wrench.id, whereabouts }, { onSuccess: onClose });
  };
  return (
    <Dialog title={t('care.whereabouts')} onClose={onClose}>
      <form onSubmit={(event) => void keep(event)}>
        <p className="soft">{t('care.whereabouts-about')}</p>
        <TextField label={t('care.place')} value={place} onChange={setPlace} />
        <TextField label={t('care.held-by')} value={heldBy} onChange={setHeldBy} />
        <KeepActions action={t('care.keep')} sending={entry} onCancel={onClose} />
      </form>
    </Dialog>
  );
}
