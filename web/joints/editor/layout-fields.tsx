import { useTranslation } from 'react-i18next';
import { FormFigure, FormText } from '../../forms/fields.tsx';
import { Select } from '../../parts/select.tsx';
import { Tick } from '../../parts/tick.tsx';
import type { LayoutForm } from '../form/joint-form.ts';

interface KindFieldsProps {
  readonly form: LayoutForm;
  readonly onChange: (part: Partial<LayoutForm>) => void;
}

const DIRECTIONS = ['clockwise', 'counter-clockwise'] as const;

function CountField({ form, onChange }: KindFieldsProps) {
  const { t } = useTranslation('lead');
  return (
    <FormFigure
      field="layout.count"
      label={t('layout.count')}
      value={form.count}
      onChange={(count) => onChange({ count })}
    />
  );
}

export function CircleFields({ form, onChange }: KindFieldsProps) {
  const { t } = useTranslation('lead');
  return (
    <div className="field-row">
      <CountField form={form} onChange={onChange} />
      <FormFigure
        field="layout.diameterMm"
        label={t('layout.diameter')}
        unit={form.unit}
        value={form.diameter}
        onChange={(diameter) => onChange({ diameter })}
      />
      <FormFigure
        field="layout.firstAngleDeg"
        label={t('layout.first-angle')}
        hint={t('layout.first-angle-hint')}
        unit="°"
        value={form.firstAngle}
        onChange={(firstAngle) => onChange({ firstAngle })}
      />
      <Select
        label={t('layout.direction')}
        value={form.direction}
        options={DIRECTIONS.map((value) => ({ value, label: t(`layout.${value}`) }))}
        onChange={(direction) => onChange({ direction })}
      />
    </div>
  );
}

export function RectangleFields({ form, onChange }: KindFieldsProps) {
  const { t } = useTranslation('lead');
  return (
    <>
      <div className="field-row">
        <FormFigure
          field="layout.rows"
          label={t('layout.rows')}
          value={form.rows}
          onChange={(rows) => onChange({ rows })}
        />
        <FormFigure
          field="layout.columns"
          label={t('layout.columns')}
          value={form.columns}
          onChange={(columns) => onChange({ columns })}
        />
        <FormFigure
          field="layout.pitchXMm"
          label={t('layout.pitch-x')}
          unit={form.unit}
          value={form.pitchX}
          onChange={(pitchX) => onChange({ pitchX })}
        />
        <FormFigure
          field="layout.pitchYMm"
          label={t('layout.pitch-y')}
          unit={form.unit}
          value={form.pitchY}
          onChange={(pitchY) => onChange({ pitchY })}
        />
      </div>
      <Tick isChosen={form.edgeOnly} onChange={(edgeOnly) => onChange({ edgeOnly })}>
        {t('layout.edge-only')}
      </Tick>
      {form.edgeOnly ? null : (
        <Tick isChosen={form.staggered} onChange={(staggered) => onChange({ staggered })}>
          {t('bench.field.staggered')}
        </Tick>
      )}
      <FormText
        field="layout.missing"
        label={t('bench.field.missing')}
        hint={t('bench.hint.missing')}
        value={form.missing}
        onChange={(missing) => onChange({ missing })}
      />
    </>
  );
}

export function LineFields({ form, onChange }: KindFieldsProps) {
  const { t } = useTranslation('lead');
  return (
    <div className="field-row">
      <CountField form={form} onChange={onChange} />
      <FormFigure
        field="layout.pitchMm"
        label={t('layout.pitch')}
        unit={form.unit}
        value={form.pitch}
        onChange={(pitch) => onChange({ pitch })}
      />
    </div>
  );
}
