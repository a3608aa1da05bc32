import type { Wrench } from '@clampwright/core/wrench';
import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import { useLanguage } from '../app/language.ts';
import { FormFigure, FormText } from '../forms/fields.tsx';
import { EntryDialog } from './entry-dialog.tsx';
import { blankCalibration, type CalibrationForm, readCalibration } from './form/calibration-form.ts';

interface CalibrationDialogProps {
  readonly wrench: Wrench;
  readonly onClose: () => void;
}

/** Enters what the certificate of a calibration says. Earlier ones stay. */
export function CalibrationDialog({ wrench, onClose }: CalibrationDialogProps) {
  const { t } = useTranslation('lead');
  const language = useLanguage();
  const [form, setForm] = useState(() => blankCalibration(new Date().toISOString().slice(0, 10)));
  const { value, faults } = readCalibration(form, language);
  const set = (part: Partial<CalibrationForm>) => setForm((before) => ({ ...before, ...part }));
  return (
    <EntryDialog
      title={t('calibration.title', { name: wrench.name })}
      action={t('wrenches.calibrate')}
      faults={faults}
      entry={value && { kind: 'calibration', wrenchId: wrench.id, calibration: value }}
      onClose={onClose}
    >
      <p className="soft">{t('calibration.about', { serial: wrench.serial })}</p>
      <div className="field-row">
        <FormText
          type="date"
          size="narrow"
          field="calibratedOn"
          label={t('calibration.on')}
          value={form.calibratedOn}
          onChange={(calibratedOn) => set({ calibratedOn })}
        />
        <FormText
          type="date"
          size="narrow"
          field="dueOn"
          label={t('calibration.due')}
          value={form.dueOn}
          onChange={(dueOn) => set({ dueOn })}
        />
        <FormText
          field="certificate"
          label={t('calibration.certificate')}
          value={form.certificate}
          onChange={(certificate) => set({ certificate })}
        />
        <FormText field="by" label={t('calibration.by')} value={form.by} onChange={(by) => set({ by })} />
        <FormFigure
          field="maximumDeviationPercent"
          label={t('calibration.deviation')}
          hint={t('calibration.deviation-hint')}
          unit="%"
          value={form.deviation}
          onChange={(deviation) => set({ deviation })}
        />
        <FormFigure
          field="expandedUncertaintyPercent"
          label={t('calibration.uncertainty')}
          hint={t('calibration.uncertainty-hint')}
          unit="%"
          value={form.uncertainty}
          onChange={(uncertainty) => set({ uncertainty })}
        />
      </div>
    </EntryDialog>
  );
}
