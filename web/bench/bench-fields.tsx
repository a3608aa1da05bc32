import type { Failure } from '@clampwright/core/failure';
import { useTranslation } from 'react-i18next';
import { Button } from '../parts/button.tsx';
import { BenchField } from './bench-field.tsx';
import type { Field } from './fields.ts';
import { type BenchForm, blankForm } from './input.ts';
import { useBenchWords } from './words.ts';

export interface BenchFieldsProps {
  readonly fields: readonly Field[];
  readonly form: BenchForm;
  readonly unreadable: readonly string[];
  /** What the calculation refused, beside its field. */
  readonly failure: Failure | undefined;
  readonly onChange: (form: BenchForm) => void;
  /** Path of the row that these fields stand in, such as `quantities[0].`. */
  readonly path?: string;
}

/** The fields of a calculation, made from its schema. */
export function BenchFields({ fields, form, onChange, path = '', ...rest }: BenchFieldsProps) {
  return (
    <div className="field-row">
      {fields.map((field) => {
        const typed = form[field.name] ?? '';
        const set = (value: BenchForm[string]) => onChange({ ...form, [field.name]: value });
        if (typeof typed === 'string' && field.shape.kind !== 'rows') {
          return (
            <BenchField
              key={field.name}
              field={field}
              path={`${path}${field.name}`}
              typed={typed}
              onChange={set}
              {...rest}
            />
          );
        }
        return (
          <BenchRows
            key={field.name}
            field={field}
            path={`${path}${field.name}`}
            rows={typeof typed === 'string' ? [] : typed}
            onChange={set}
            {...rest}
          />
        );
      })}
    </div>
  );
}

interface BenchRowsProps extends Pick<BenchFieldsProps, 'unreadable' | 'failure'> {
  readonly field: Field;
  readonly path: string;
  readonly rows: readonly BenchForm[];
  readonly onChange: (rows: readonly BenchForm[]) => void;
}

function BenchRows({ field, path, rows, onChange, ...rest }: BenchRowsProps) {
  const { t } = useTranslation('lead');
  const words = useBenchWords();
  if (field.shape.kind !== 'rows') return null;
  const { fields } = field.shape;
  return (
    <fieldset className="bench-rows">
      <legend>{words.field(field.name)}</legend>
      {rows.map((row, index) => (
        // Rows carry nothing of their own; they are added and taken out at the end only.
        <BenchFields
          key={index}
          fields={fields}
          form={row}
          path={`${path}[${index}].`}
          onChange={(changed) => onChange(rows.with(index, changed))}
          {...rest}
        />
      ))}
      <div className="actions">
        <Button onPress={() => onChange([...rows, blankForm(fields)])}>{t('bench.row-add')}</Button>
        <Button kind="quiet" isDisabled={rows.length < 2} onPress={() => onChange(rows.slice(0, -1))}>
          {t('bench.row-remove')}
        </Button>
      </div>
    </fieldset>
  );
}
