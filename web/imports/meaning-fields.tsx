import { isTorqueUnit, unitsOf } from '@clampwright/core/quantity';
import { useTranslation } from 'react-i18next';
import { Select } from '../parts/select.tsx';
import { TextField } from '../parts/text-field.tsx';
import { ANGLE_UNITS, type Role, SIGNS, TIME_FORMATS } from './mapping.ts';
import { isZone, type MappingForm } from './mapping-form.ts';

const TORQUE_UNITS = unitsOf('torque').filter(isTorqueUnit);

interface MeaningFieldsProps {
  readonly form: MappingForm;
  readonly onChange: (form: MappingForm) => void;
}

/** What the columns leave unsaid: units, signs, the form of the time and its zone. */
export function MeaningFields({ form, onChange }: MeaningFieldsProps) {
  const { t } = useTranslation('lead');
  const set = (part: Partial<MappingForm>) => onChange({ ...form, ...part });
  const has = (role: Role) => form.columns.some((column) => column.role === role);
  return (
    <div className="field-row">
      {has('torqueUnit') ? null : (
        <Select
          size="narrow"
          label={t('import.torque-unit')}
          value={form.torqueUnit}
          options={TORQUE_UNITS.map((value) => ({ value, label: value }))}
          onChange={(torqueUnit) => set({ torqueUnit })}
        />
      )}
      <Select
        label={t('import.signs')}
        value={form.signs}
        options={SIGNS.map((value) => ({ value, label: t(`import.signs-${value}`) }))}
        onChange={(signs) => set({ signs })}
      />
      {has('angle') && !has('angleUnit') ? (
        <Select
          size="narrow"
          label={t('import.angle-unit')}
          value={form.angleUnit}
          options={ANGLE_UNITS.map((value) => ({ value, label: t(`import.angle-unit-${value}`) }))}
          onChange={(angleUnit) => set({ angleUnit })}
        />
      ) : null}
      {has('time') ? <TimeFields form={form} onChange={set} /> : null}
    </div>
  );
}

interface TimeFieldsProps {
  readonly form: MappingForm;
  readonly onChange: (part: Partial<MappingForm>) => void;
}

function TimeFields({ form, onChange }: TimeFieldsProps) {
  const { t } = useTranslation('lead');
  const isZoned = form.timeFormat !== 'unix-seconds' && form.timeFormat !== 'elapsed-seconds';
  return (
    <>
      <Select
        label={t('import.time-format')}
        value={form.timeFormat}
        options={TIME_FORMATS.map((value) => ({ value, label: t(`import.time.${FORMAT_WORDS[value]}`) }))}
        onChange={(timeFormat) => onChange({ timeFormat })}
      />
      {isZoned ? (
        <TextField
          label={t('import.zone')}
          hint={t('import.zone-hint')}
          value={form.zone}
          problem={isZone(form.zone) ? undefined : t('import.missing.zone')}
          onChange={(zone) => onChange({ zone })}
        />
      ) : null}
      {form.timeFormat === 'elapsed-seconds' ? (
        <TextField
          label={t('import.start')}
          hint={t('import.start-hint')}
          value={form.start}
          onChange={(start) => onChange({ start })}
        />
      ) : null}
    </>
  );
}

const FORMAT_WORDS = {
  'iso-8601': 'iso',
  'dd.MM.yyyy HH:mm:ss': 'day-first',
  'MM/dd/yyyy HH:mm:ss': 'month-first',
  'yyyy-MM-dd HH:mm': 'year-first',
  'unix-seconds': 'unix',
  'elapsed-seconds': 'elapsed',
} as const;
