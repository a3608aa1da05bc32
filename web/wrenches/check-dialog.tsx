import { type BeforeUseCheck, DIRECTIONS, type Direction, type Wrench } from '@clampwright/core/wrench';
import { type FormEvent, useState } from 'react';
import { useTranslation } from 'react-i18next';
import { useLanguage } from '../app/language.ts';
import { useWho } from '../app/who.tsx';
import { FaultsProvider } from '../forms/faults.tsx';
import { FormFigure, FormText } from '../forms/fields.tsx';
import { readerIn } from '../forms/reader.ts';
import { Dialog } from '../parts/dialog.tsx';
import { KeepActions } from '../parts/keep-actions.tsx';
import { Select } from '../parts/select.tsx';
import { newIdentity } from '../work/identity.ts';
import { useCareEntry } from './use-care-entry.ts';

interface CheckDialogProps {
  readonly wrench: Wrench;
  readonly onClose: () => void;
}

/** One pull on a checker before work: both figures. */
export function CheckDialog({ wrench, onClose }: CheckDialogProps) {
  const { t } = useTranslation('lead');
  const language = useLanguage();
  const who = useWho();
  const entry = useCareEntry();
  const [id] = useState(newIdentity);
  const [isAskedFor, setAskedFor] = useState(false);
  const [checker, setChecker] = useState('');
  const [direction, setDirection] = useState<Direction>('clockwise');
  const [indicated, setIndicated] = useState('');
  const [reference, setReference] = useState('');
  const reader = readerIn(language);
  const figures = {
    checker: reader.text('checker', checker),
    indicatedNm: reader.number('indicatedNm', indicated, { isPositive: true }),
    referenceNm: reader.number('referenceNm', reference, { isPositive: true }),
  };
  const keep = async (event: FormEvent) => {
    event.preventDefault();
    setAskedFor(true);
    const { checker: name, indicatedNm, referenceNm } = figures;
    if (name === undefined || indicatedNm === undefined || referenceNm === undefined) return;
    const somebody = await who.ask();
    if (!somebody) return;
    const check: BeforeUseCheck = {
      id,
      wrenchId: wrench.id,
      at: new Date().toISOString(),
      by: somebody.name,
      checker: name,
      direction,
      indicatedNm,
      referenceNm,
    };
    entry.mutate({ kind: 'check', check }, { onSuccess: onClose });
  };
  return (
    <Dialog title={t('care.check-add')} size="wide" onClose={onClose}>
      <FaultsProvider faults={reader.faults} isAskedFor={isAskedFor}>
        <form onSubmit={(event) => void keep(event)}>
          <div className="field-row">
            <FormText
              field="checker"
              label={t('care.checker')}
              hint={t('care.checker-hint')}
              value={checker}
              onChange={setChecker}
            />
            <Select
              size="narrow"
              label={t('care.direction')}
              value={direction}
              options={DIRECTIONS.map((one) => ({ value: one, label: t(`care.${one}`) }))}
              onChange={setDirection}
            />
            <FormFigure
              field="indicatedNm"
              label={t('care.wrench-shows')}
              unit="N·m"
              value={indicated}
              onChange={setIndicated}
            />
            <FormFigure
              field="referenceNm"
              label={t('care.checker-shows')}
              unit="N·m"
              value={reference}
              onChange={setReference}
            />
          </div>
          <KeepActions action={t('care.keep')} sending={entry} onCancel={onClose} />
        </form>
      </FaultsProvider>
    </Dialog>
  );
}
