import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import { Button } from '../parts/button.tsx';
import { Select } from '../parts/select.tsx';
import { TextField } from '../parts/text-field.tsx';
import type { Field, Shape } from './fields.ts';
import { FigureField, type FigureFieldProps } from './figure-field.tsx';
import type { BenchForm } from './input.ts';
import { unitInName } from './unit-in-name.ts';
import { unitOf } from './units.ts';
import { useBenchWords } from './words.ts';

interface UncertainFieldProps extends Omit<FigureFieldProps, 'shape' | 'typed' | 'onChange'> {
  readonly shape: Extract<Shape, { kind: 'uncertain' }>;
  readonly form: BenchForm;
  readonly onChange: (form: BenchForm) => void;
}

const textIn = (form: BenchForm, part: string): string => {
  const text = form[part];
  return typeof text === 'string' ? text : '';
};

/** A figure and, for whoever knows it, its uncertainty. */
export function UncertainField({ shape, form, onChange, ...field }: UncertainFieldProps) {
  const { t } = useTranslation('lead');
  const isTold = textIn(form, 'standardUncertainty') !== '';
  const [isOpen, setOpen] = useState(false);
  return (
    <div className="uncertain-field">
      <FigureField
        {...field}
        shape={shape.figure}
        typed={textIn(form, 'value')}
        onChange={(value) => onChange({ ...form, value })}
      />
      {isTold || isOpen ? (
        <Uncertainty
          name={field.name}
          label={field.label}
          unit={unitOf(field.name, field.hand.units) ?? unitInName(field.name)}
          fields={shape.fields}
          form={form}
          onChange={onChange}
        />
      ) : (
        <Button kind="quiet" label={t('bench.uncertain-tell', { name: field.label })} onPress={() => setOpen(true)}>
          {t('bench.uncertain-add')}
        </Button>
      )}
    </div>
  );
}

interface UncertaintyProps {
  readonly name: string;
  readonly label: string;
  readonly unit: string | undefined;
  readonly fields: readonly Field[];
  readonly form: BenchForm;
  readonly onChange: (form: BenchForm) => void;
}

function Uncertainty({ label, unit, fields, form, onChange }: UncertaintyProps) {
  const { t } = useTranslation('lead');
  const words = useBenchWords();
  const distribution = fields.find((field) => field.name === 'distribution')?.shape;
  const options = distribution?.kind === 'choice' ? distribution.options : [];
  return (
    <div className="uncertainty">
      <TextField
        label={t('bench.uncertainty-of', { name: label })}
        value={textIn(form, 'standardUncertainty')}
        inputMode="decimal"
        after={unit}
        onChange={(standardUncertainty) => onChange({ ...form, standardUncertainty })}
      />
      <Select
        label={t('bench.distribution-of', { name: label })}
        value={textIn(form, 'distribution') || (options[0] ?? '')}
        options={options.map((value) => ({ value, label: words.value(value) }))}
        onChange={(chosen) => onChange({ ...form, distribution: chosen })}
      />
    </div>
  );
}
