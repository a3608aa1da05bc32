import { isTorqueUnit, showNumber, unitsOf } from '@clampwright/core/quantity';
import { DIRECTIONS, DRIVES_MM } from '@clampwright/core/wrench';
import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import { useLanguage } from '../app/language.ts';
import { FormFigure, FormText } from '../forms/fields.tsx';
import { useNow } from '../parts/now.ts';
import { Select } from '../parts/select.tsx';
import { newIdentity } from '../work/identity.ts';
import { EntryDialog } from './entry-dialog.tsx';
import { BLANK_WRENCH, readWrench, type WrenchForm } from './form/wrench-form.ts';

const TORQUE_UNITS = unitsOf('torque').filter(isTorqueUnit);
const TYPES = ['I', 'II'] as const;
const USES = [...DIRECTIONS, 'both'] as const;
const LENGTH_UNITS = ['mm', 'in'] as const;
const CONNECTIONS = ['typed', 'simulated', 'serial'] as const;

interface PartProps {
  readonly form: WrenchForm;
  readonly onChange: (part: Partial<WrenchForm>) => void;
}

/** Registers a wrench, with the figures of its plate. */
export function WrenchDialog({ onClose }: { readonly onClose: () => void }) {
  const { t } = useTranslation('lead');
  const language = useLanguage();
  const [id] = useState(newIdentity);
  const today = useNow().toISOString().slice(0, 10);
  const [form, setForm] = useState(BLANK_WRENCH);
  const { value, faults } = readWrench(form, id, language, today);
  const set = (part: Partial<WrenchForm>) => setForm((before) => ({ ...before, ...part }));
  return (
    <EntryDialog
      title={t('wrenches.register')}
      action={t('wrenches.register')}
      faults={faults}
      entry={value && { kind: 'wrench', wrench: value }}
      onClose={onClose}
    >
      <PlateFields form={form} onChange={set} />
      <RangeFields form={form} onChange={set} />
      <MakeFields form={form} onChange={set} />
      <ConnectionFields form={form} onChange={set} />
    </EntryDialog>
  );
}

function PlateFields({ form, onChange }: PartProps) {
  const { t } = useTranslation('lead');
  return (
    <div className="field-row">
      <FormText
        field="name"
        label={t('wrench.name')}
        hint={t('wrench.name-hint')}
        value={form.name}
        onChange={(name) => onChange({ name })}
      />
      <FormText
        field="serial"
        label={t('wrench.serial')}
        value={form.serial}
        onChange={(serial) => onChange({ serial })}
      />
      <Select
        label={t('wrench.type')}
        value={form.type}
        options={TYPES.map((value) => ({ value, label: t(`wrench.type-${value}`) }))}
        onChange={(type) => onChange({ type })}
      />
      <FormText
        field="class"
        size="narrow"
        label={t('wrench.class')}
        hint={t('wrench.class-hint')}
        value={form.class}
        onChange={(text) => onChange({ class: text })}
      />
    </div>
  );
}

function RangeFields({ form, onChange }: PartProps) {
  const { t } = useTranslation('lead');
  return (
    <div className="field-row">
      <Select
        size="narrow"
        label={t('wrench.unit')}
        value={form.unit}
        options={TORQUE_UNITS.map((value) => ({ value, label: value }))}
        onChange={(unit) => onChange({ unit })}
      />
      <FormFigure
        field="lowestNm"
        label={t('wrench.lowest')}
        unit={form.unit}
        value={form.lowest}
        onChange={(lowest) => onChange({ lowest })}
      />
      <FormFigure
        field="highestNm"
        label={t('wrench.highest')}
        unit={form.unit}
        value={form.highest}
        onChange={(highest) => onChange({ highest })}
      />
      <FormFigure
        field="resolutionNm"
        label={t('wrench.resolution')}
        hint={t('wrench.resolution-hint')}
        unit={form.unit}
        value={form.resolution}
        onChange={(resolution) => onChange({ resolution })}
      />
      <FormFigure
        field="angleResolutionDeg"
        label={t('wrench.angle-resolution')}
        hint={t('wrench.angle-resolution-hint')}
        unit="°"
        value={form.angleResolution}
        onChange={(angleResolution) => onChange({ angleResolution })}
      />
    </div>
  );
}

function MakeFields({ form, onChange }: PartProps) {
  const { t } = useTranslation('lead');
  const language = useLanguage();
  return (
    <div className="field-row">
      <Select
        label={t('wrench.directions')}
        value={form.directions}
        options={USES.map((value) => ({ value, label: t(`wrench.directions-${value}`) }))}
        onChange={(directions) => onChange({ directions })}
      />
      <Select
        size="narrow"
        label={t('wrench.drive')}
        value={form.drive}
        options={[
          ...DRIVES_MM.map((size) => ({
            value: `${size}` as const,
            label: `□ ${showNumber(size, language)}\u00a0mm`,
          })),
          { value: 'other' as const, label: t('wrench.drive-other') },
        ]}
        onChange={(drive) => onChange({ drive })}
      />
      <FormText
        type="date"
        size="narrow"
        field="madeOn"
        label={t('wrench.made-on')}
        hint={t('wrench.made-on-hint')}
        value={form.madeOn}
        onChange={(madeOn) => onChange({ madeOn })}
      />
    </div>
  );
}

function ConnectionFields({ form, onChange }: PartProps) {
  const { t } = useTranslation('lead');
  return (
    <div className="field-row">
      <FormFigure
        field="leverMm"
        label={t('wrench.lever')}
        hint={t('wrench.lever-hint')}
        value={form.lever}
        onChange={(lever) => onChange({ lever })}
      />
      <Select
        size="narrow"
        label={t('wrench.length-unit')}
        value={form.lengthUnit}
        options={LENGTH_UNITS.map((value) => ({ value, label: value }))}
        onChange={(lengthUnit) => onChange({ lengthUnit })}
      />
      <Select
        label={t('wrench.connection')}
        value={form.connection}
        options={CONNECTIONS.map((value) => ({ value, label: t(`wrenches.connection-${value}`) }))}
        onChange={(connection) => onChange({ connection })}
      />
      {form.connection === 'serial' ? (
        <FormText
          field="connection.path"
          label={t('wrench.path')}
          hint={t('wrench.path-hint')}
          value={form.path}
          onChange={(path) => onChange({ path })}
        />
      ) : null}
    </div>
  );
}
