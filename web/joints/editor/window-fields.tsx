import { useTranslation } from 'react-i18next';
import { FormFigure, PlaceProblems } from '../../forms/fields.tsx';
import { Select } from '../../parts/select.tsx';
import type { WindowForm } from '../form/joint-form.ts';
import { WINDOW_FIELDS } from '../form/read-window.ts';

const FORMS = ['percent', 'plus-minus', 'limits'] as const;

interface WindowFieldsProps {
  readonly title: string;
  /** Path in the joint, such as `stages[0].torque`. */
  readonly place: string;
  readonly form: WindowForm;
  readonly units: readonly string[];
  /** The window as it was understood, in words. */
  readonly understood: string | undefined;
  readonly onChange: (form: WindowForm) => void;
}

/** Lower limit, target and upper limit, typed as the manual has them. */
export function WindowFields({ title, place, form, units, understood, onChange }: WindowFieldsProps) {
  const { t } = useTranslation('lead');
  return (
    <fieldset className="window">
      <legend>{title}</legend>
      <div className="field-row">
        <Select
          label={t('window.form')}
          value={form.form}
          options={FORMS.map((value) => ({ value, label: t(`window.form-${value}`) }))}
          onChange={(chosen) => onChange({ ...form, form: chosen })}
        />
        {WINDOW_FIELDS[form.form].map((field) => (
          <FormFigure
            key={field}
            field={`${place}.${field}`}
            label={t(`window.${field}`)}
            {...(field === 'percent' ? { unit: '%' } : {})}
            value={form[field]}
            onChange={(text) => onChange({ ...form, [field]: text })}
          />
        ))}
        <Select
          size="narrow"
          label={t('window.unit')}
          value={form.unit}
          options={units.map((value) => ({ value, label: value === 'deg' ? '°' : value }))}
          onChange={(unit) => onChange({ ...form, unit })}
        />
      </div>
      {understood ? <p className="understood">{understood}</p> : null}
      <PlaceProblems place={place} shown={WINDOW_FIELDS[form.form].map((field) => `${place}.${field}`)} />
    </fieldset>
  );
}
