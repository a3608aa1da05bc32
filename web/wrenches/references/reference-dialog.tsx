import type { ReferenceStandard } from '@clampwright/core/wrench';
import { type FormEvent, useState } from 'react';
import { useTranslation } from 'react-i18next';
import { useLanguage } from '../../app/language.ts';
import { useWho } from '../../app/who.tsx';
import { FaultsProvider } from '../../forms/faults.tsx';
import { FormFigure, FormText } from '../../forms/fields.tsx';
import { Dialog } from '../../parts/dialog.tsx';
import { KeepActions } from '../../parts/keep-actions.tsx';
import { newIdentity } from '../../work/identity.ts';
import { useCareEntry } from '../use-care-entry.ts';
import { beginReference, type ReferenceForm, readReference } from './reference-form.ts';

interface ReferenceDialogProps {
  readonly before: ReferenceStandard | undefined;
  readonly onClose: () => void;
}

/** A reference standard with the figures of its certificate; earlier certificates stay. */
export function ReferenceDialog({ before, onClose }: ReferenceDialogProps) {
  const { t } = useTranslation('lead');
  const language = useLanguage();
  const who = useWho();
  const entry = useCareEntry();
  const [id] = useState(() => before?.id ?? newIdentity());
  const [form, setForm] = useState(() => beginReference(before, new Date().toISOString().slice(0, 10), language));
  const [isAskedFor, setAskedFor] = useState(false);
  const { value, faults } = readReference(form, id, language);
  const set = (part: Partial<ReferenceForm>) => setForm((now) => ({ ...now, ...part }));
  const keep = async (event: FormEvent) => {
    event.preventDefault();
    setAskedFor(true);
    if (value && (await who.ask())) entry.mutate({ kind: 'reference', reference: value }, { onSuccess: onClose });
  };
  const day = (field: 'calibratedOn' | 'dueOn', label: string) => (
    <FormText
      type="date"
      size="narrow"
      field={field}
      label={label}
      value={form[field]}
      onChange={(text) => set({ [field]: text })}
    />
  );
  return (
    <Dialog title={t(before ? 'care.reference-renew' : 'care.reference-add')} size="wide" onClose={onClose}>
      <FaultsProvider faults={faults} isAskedFor={isAskedFor}>
        <form onSubmit={(event) => void keep(event)}>
          <div className="field-row">
            <FormText field="name" label={t('wrench.name')} value={form.name} onChange={(name) => set({ name })} />
            <FormText
              field="serial"
              label={t('wrench.serial')}
              value={form.serial}
              onChange={(serial) => set({ serial })}
            />
            <FormFigure
              field="lowestNm"
              label={t('wrench.lowest')}
              unit="N·m"
              value={form.lowest}
              onChange={(lowest) => set({ lowest })}
            />
            <FormFigure
              field="highestNm"
              label={t('wrench.highest')}
              unit="N·m"
              value={form.highest}
              onChange={(highest) => set({ highest })}
            />
            <FormFigure
              field="expandedUncertaintyPercent"
              label={t('calibration.uncertainty')}
              hint={t('calibration.uncertainty-hint')}
              unit="%"
              value={form.uncertainty}
              onChange={(uncertainty) => set({ uncertainty })}
            />
            <FormText
              field="certificate"
              label={t('calibration.certificate')}
              value={form.certificate}
              onChange={(certificate) => set({ certificate })}
            />
            <FormText field="by" label={t('calibration.by')} value={form.by} onChange={(by) => set({ by })} />
            {day('calibratedOn', t('calibration.on'))}
            {day('dueOn', t('calibration.due'))}
            <FormText field="place" label={t('care.place')} value={form.place} onChange={(place) => set({ place })} />
          </div>
          <KeepActions action={t('care.keep')} sending={entry} onCancel={onClose} />
        </form>
      </FaultsProvider>
    </Dialog>
  );
}
