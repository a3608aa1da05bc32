import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import { useLanguage } from '../app/language.ts';
import { FormFigure, FormText } from '../forms/fields.tsx';
import { Select } from '../parts/select.tsx';
import { newIdentity } from '../work/identity.ts';
import { EntryDialog } from './entry-dialog.tsx';
import { type AdapterForm, BLANK_ADAPTER, readAdapter } from './form/turning-form.ts';

const LENGTH_UNITS = ['mm', 'in'] as const;

/** Puts an adapter into the toolbox. */
export function AdapterDialog({ onClose }: { readonly onClose: () => void }) {
  const { t } = useTranslation('lead');
  const language = useLanguage();
  const [id] = useState(newIdentity);
  const [form, setForm] = useState(BLANK_ADAPTER);
  const { value, faults } = readAdapter(form, id, language);
  const set = (part: Partial<AdapterForm>) => setForm((before) => ({ ...before, ...part }));
  return (
    <EntryDialog
      title={t('wrenches.add-adapter')}
      action={t('wrenches.add-adapter')}
      faults={faults}
      entry={value && { kind: 'adapter', adapter: value }}
      onClose={onClose}
    >
      <div className="field-row">
        <FormText field="name" label={t('wrench.name')} value={form.name} onChange={(name) => set({ name })} />
        <FormFigure
          field="lengthMm"
          label={t('adapter.length')}
          hint={t('adapter.length-hint')}
          value={form.length}
          onChange={(length) => set({ length })}
        />
        <Select
          size="narrow"
          label={t('wrench.length-unit')}
          value={form.lengthUnit}
          options={LENGTH_UNITS.map((unit) => ({ value: unit, label: unit }))}
          onChange={(lengthUnit) => set({ lengthUnit })}
        />
        <FormFigure
          field="angleDeg"
          label={t('adapter.angle')}
          hint={t('adapter.angle-hint')}
          unit="°"
          value={form.angle}
          onChange={(angle) => set({ angle })}
        />
        <FormFigure
          field="lengthStandardUncertaintyMm"
          label={t('adapter.length-uncertainty')}
          hint={t('adapter.length-uncertainty-hint')}
          unit="mm"
          value={form.lengthUncertainty}
          onChange={(lengthUncertainty) => set({ lengthUncertainty })}
        />
      </div>
    </EntryDialog>
  );
}
