import { useTranslation } from 'react-i18next';
import { FormFigure } from '../../forms/fields.tsx';
import { Select } from '../../parts/select.tsx';
import { BOLT_FIGURES, type OwnRowForm } from './own-row-form.ts';

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

const SYSTEMS = ['ISO metric', 'Unified'] as const;
const NEEDED = ['majorDiameterMm', 'pitchMm'];

export function BoltFields({ form, onChange }: FiguresProps) {
  const { t } = useTranslation('lead');
  return (
    <>
      <p className="soft">{t('own.bolt-about')}</p>
      <div className="field-row">
        <Select
          label={t('own.system')}
          value={form.system}
          options={SYSTEMS.map((value) => ({ value, label: t(`bench.value.${value}`) }))}
          onChange={(system) => onChange({ system })}
        />
        {BOLT_FIGURES.map((name) => (
          <FormFigure
            key={name}
            field={name}
            label={t(`bench.field.${name}`)}
            isRequired={NEEDED.includes(name)}
            unit={name === 'stressAreaMm2' ? 'mm²' : 'mm'}
            value={form.bolt[name]}
            onChange={(figure) => onChange({ bolt: { ...form.bolt, [name]: figure } })}
          />
        ))}
      </div>
    </>
  );
}
