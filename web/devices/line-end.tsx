import { useTranslation } from 'react-i18next';
import { DecimalField } from '../parts/decimal-field.tsx';
import { Select } from '../parts/select.tsx';
import type { LinePartProps } from './line-dialog.tsx';

const ENDS = ['result', 'fall', 'silence'] as const;

/** What marks the end of a pull. */
export function LineEnd({ form, onChange }: LinePartProps) {
  const { t } = useTranslation('lead');
  return (
    <div className="field-row">
      <Select
        label={t('lines.end')}
        value={form.end}
        options={ENDS.map((value) => ({ value, label: t(`lines.end-${value}`) }))}
        onChange={(end) => onChange({ end })}
      />
      {form.end === 'fall' ? (
        <>
          <DecimalField
            label={t('lines.below')}
            unit={form.torqueUnit}
            value={form.below}
            onChange={(below) => onChange({ below })}
          />
          <DecimalField label={t('lines.samples')} value={form.samples} onChange={(samples) => onChange({ samples })} />
        </>
      ) : null}
      {form.end === 'silence' ? (
        <DecimalField label={t('lines.seconds')} value={form.seconds} onChange={(seconds) => onChange({ seconds })} />
      ) : null}
      {form.lines.some(({ says }) => says === 'sample') ? (
        <DecimalField
          label={t('lines.rate')}
          hint={t('lines.rate-hint')}
          value={form.rate}
          onChange={(rate) => onChange({ rate })}
        />
      ) : null}
    </div>
  );
}
