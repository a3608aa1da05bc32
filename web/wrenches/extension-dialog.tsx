import { isTorqueUnit, unitsOf } from '@clampwright/core/quantity';
import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import { useLanguage } from '../app/language.ts';
import { FormFigure, FormText } from '../forms/fields.tsx';
import { Select } from '../parts/select.tsx';
import { newIdentity } from '../work/identity.ts';
import { EntryDialog } from './entry-dialog.tsx';
import { BLANK_EXTENSION, type ExtensionForm, readExtension } from './form/turning-form.ts';

const TORQUE_UNITS = unitsOf('torque').filter(isTorqueUnit);
const LENGTH_UNITS = ['mm', 'in'] as const;

/** Puts an extension into the toolbox. */
export function ExtensionDialog({ onClose }: { readonly onClose: () => void }) {
  const { t } = useTranslation('lead');
  const language = useLanguage();
  const [id] = useState(newIdentity);
  const [form, setForm] = useState(BLANK_EXTENSION);
  const { value, faults } = readExtension(form, id, language);
  const set = (part: Partial<ExtensionForm>) => setForm((before) => ({ ...before, ...part }));
  return (
    <EntryDialog
      title={t('wrenches.add-extension')}
      action={t('wrenches.add-extension')}
      faults={faults}
      entry={value && { kind: 'extension', extension: value }}
      onClose={onClose}
    >
      <div className="field-row">
        <FormText field="name" label={t('wrench.name')} value={form.name} onChange={(name) => set({ name })} />
        <FormFigure
          field="lengthMm"
          label={t('extension.length')}
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
          field="stiffnessNmPerDeg"
          label={t('extension.stiffness')}
          hint={t('extension.stiffness-hint')}
          value={form.stiffness}
          onChange={(stiffness) => set({ stiffness })}
        />
        <Select
          size="narrow"
          label={t('wrench.unit')}
          value={form.unit}
          options={TORQUE_UNITS.map((unit) => ({ value: unit, label: `${unit}/°` }))}
          onChange={(unit) => set({ unit })}
        />
        <FormFigure
          field="stiffnessStandardUncertaintyPercent"
          label={t('extension.stiffness-uncertainty')}
          hint={t('extension.stiffness-uncertainty-hint')}
          unit="%"
          value={form.stiffnessUncertainty}
          onChange={(stiffnessUncertainty) => set({ stiffnessUncertainty })}
        />
      </div>
    </EntryDialog>
  );
}
