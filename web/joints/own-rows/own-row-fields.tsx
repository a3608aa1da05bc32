import { useTranslation } from 'react-i18next';
import { FormFigure } from '../../forms/fields.tsx';
import type { OwnRowForm } from './own-row-form.ts';

interface FiguresProps {
  readonly form: OwnRowForm;
  readonly onChange: (part: Partial<OwnRowForm>) => void;
}

export function StrengthFields({ form, onChange }: FiguresProps) {
  const { t } = useTranslation('lead');
  return (
    <div className="field-row">
      <FormFigure
        field="yieldStrengthMPa"
        label={t('own.yield')}
        unit="MPa"
        value={form.yieldMPa}
        onChange={(yieldMPa) => onChange({ yieldMPa })}
      />
      <FormFigure
        field="tensileStrengthMPa"
        label={t('own.tensile')}
        unit="MPa"
        value={form.tensileMPa}
        onChange={(tensileMPa) => onChange({ tensileMPa })}
      />
    </div>
  );
}

export function FrictionFields({ form, onChange }: FiguresProps) {
  const { t } = useTranslation('lead');
  return (
    <>
      <p className="soft">{t('own.friction-about')}</p>
      <div className="field-row">
        <FormFigure
          field="threadFriction.lower"
          label={t('own.thread-lower')}
          value={form.threadLower}
          onChange={(threadLower) => onChange({ threadLower })}
        />
        <FormFigure
          field="threadFriction.upper"
          label={t('own.thread-upper')}
          value={form.threadUpper}
          onChange={(threadUpper) => onChange({ threadUpper })}
        />
      </div>
      <div className="field-row">
        <FormFigure
          field="bearingFriction.lower"
          label={t('own.bearing-lower')}
          value={form.bearingLower}
          onChange={(bearingLower) => onChange({ bearingLower })}
        />
        <FormFigure
          field="bearingFriction.upper"
          label={t('own.bearing-upper')}
          value={form.bearingUpper}
          onChange={(bearingUpper) => onChange({ bearingUpper })}
        />
      </div>
    </>
  );
}
