import type { NewRecheck, RecallPage } from '@clampwright/server/contract';
import { type FormEvent, useState } from 'react';
import { useTranslation } from 'react-i18next';
import { useWho } from '../app/who.tsx';
import { Dialog } from '../parts/dialog.tsx';
import { KeepActions } from '../parts/keep-actions.tsx';
import { Select } from '../parts/select.tsx';
import { TextField } from '../parts/text-field.tsx';
import { newIdentity } from '../work/identity.ts';
import { useCareEntry } from '../wrenches/use-care-entry.ts';

interface RecheckDialogProps {
  readonly recallId: string;
  readonly line: RecallPage['lines'][number];
  readonly onClose: () => void;
}

const OUTCOMES = ['found-tight', 'tightened-again', 'fastener-replaced', 'left-as-it-is'] as const;

/** Says what was done about one pull; said again, the last word stands and the earlier ones stay. */
export function RecheckDialog({ recallId, line: { pull, recheck }, onClose }: RecheckDialogProps) {
  const { t } = useTranslation('lead');
  const who = useWho();
  const entry = useCareEntry();
  const [id] = useState(newIdentity);
  const [outcome, setOutcome] = useState<NewRecheck['outcome']>(recheck?.outcome ?? 'found-tight');
  const [note, setNote] = useState(recheck?.note ?? '');
  const keep = async (event: FormEvent) => {
    event.preventDefault();
    if (!(await who.ask())) return;
    const said = { id, pullId: pull.pullId, outcome, note: note.trim() };
    entry.mutate({ kind: 'recheck', recallId, recheck: said }, { onSuccess: onClose });
  };
  return (
    <Dialog title={t('care.recheck-title')} onClose={onClose}>
      <form onSubmit={(event) => void keep(event)}>
        <p className="soft">
          {pull.asset}:{' '}
          {t('care.recall-position', { joint: `${pull.jointRef} ${pull.joint}`, position: pull.position })}
        </p>
        <Select
          label={t('care.recheck-title')}
          value={outcome}
          options={OUTCOMES.map((one) => ({ value: one, label: t(`care.outcome-${one}`) }))}
          onChange={setOutcome}
        />
        <TextField isLong label={t('care.note')} value={note} onChange={setNote} />
        <KeepActions action={t('care.keep')} sending={entry} onCancel={onClose} />
      </form>
    </Dialog>
  );
}
