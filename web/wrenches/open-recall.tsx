import type { Calibration } from '@clampwright/core/wrench';
import { useNavigate } from '@tanstack/react-router';
import { type FormEvent, useState } from 'react';
import { useTranslation } from 'react-i18next';
import { useWho } from '../app/who.tsx';
import { KeepActions } from '../parts/keep-actions.tsx';
import { TextField } from '../parts/text-field.tsx';
import { Tick } from '../parts/tick.tsx';
import { newIdentity } from '../work/identity.ts';
import { useCareEntry } from './use-care-entry.ts';

interface OpenRecallProps {
  readonly calibration: Calibration;
  readonly isFoundGood: boolean;
  /** Where it is asked in a dialog. */
  readonly onCancel?: () => void;
}

/** Opens the recall that a calibration gives cause for: found off, or known to have been dropped. */
export function OpenRecall({ calibration, isFoundGood, onCancel }: OpenRecallProps) {
  const { t } = useTranslation('lead');
  const navigate = useNavigate();
  const who = useWho();
  const entry = useCareEntry();
  const [id] = useState(newIdentity);
  const [isDropped, setDropped] = useState(isFoundGood);
  const [what, setWhat] = useState('');
  const [on, setOn] = useState(calibration.calibratedOn);
  const { at: foundAt } = calibration.asFound;
  const dayEnd = `${on}T23:59:59.999Z`;
  const dropped = { what: what.trim(), at: dayEnd < foundAt ? dayEnd : foundAt };
  const isReady = !isDropped || (dropped.what.length >= 3 && on !== '');
  const open = async (event: FormEvent) => {
    event.preventDefault();
    if (!isReady || !(await who.ask())) return;
    const recall = { id, calibrationId: calibration.id, ...(isDropped ? { dropped } : {}) };
    entry.mutate(
      { kind: 'recall', recall },
      { onSuccess: () => void navigate({ to: '/recalls/$recallId', params: { recallId: id } }) },
    );
  };
  return (
    <form onSubmit={(event) => void open(event)}>
      {isFoundGood ? null : (
        <Tick isChosen={isDropped} onChange={setDropped}>
          {t('care.was-dropped')}
        </Tick>
      )}
      {isDropped ? (
        <div className="field-row">
          <TextField label={t('care.dropped-what')} value={what} onChange={setWhat} />
          <TextField type="date" size="narrow" label={t('care.dropped-at')} value={on} onChange={setOn} />
        </div>
      ) : null}
      <KeepActions action={t('care.open-recall')} sending={entry} isReady={isReady} onCancel={onCancel} />
    </form>
  );
}
