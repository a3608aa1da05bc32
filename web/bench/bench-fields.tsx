import { memo, useId } from 'react';
import { useTranslation } from 'react-i18next';
import { Button } from '../parts/button.tsx';
import { BenchField, type FieldProps } from './bench-field.tsx';
import { type Field, fieldsShown } from './fields.ts';
import { type BenchForm, blankForm } from './input.ts';
import { NamedField } from './named-field.tsx';
import { NeedWords } from './need-words.tsx';
import { useBenchWords } from './words.ts';

interface BenchFieldsProps extends FieldProps {
  readonly fields: readonly Field[];
  readonly form: BenchForm;
  /** Path of the row that these fields stand in, such as `quantities[0].`. */
  readonly path?: string;
}

/** The fields of a calculation, made from its schema. */
export function BenchFields({ fields, form, path = '', ...rest }: BenchFieldsProps) {
  return (
    <div className="field-row">
      {fields.map((field) => {
        const typed = form[field.name] ?? '';
        const place = { ...rest, path: `${path}${field.name}` };
        if (field.shape.kind === 'named') {
          const { fields: figures } = field.shape;
          const onChange = (changed: BenchForm[string]) => rest.onField(field.name, changed);
          return (
            <NamedField key={field.name} fields={figures} typed={typed} hand={rest.hand} onChange={onChange}>
              {typeof typed === 'string' ? (
                <BenchField {...place} field={field} typed={typed} />
              ) : (
                <BenchRows {...place} field={field} rows={typed} />
              )}
            </NamedField>
          );
        }
        if (field.shape.kind !== 'rows' && field.shape.kind !== 'group') {
          return <BenchField key={field.name} {...place} field={field} typed={typed} />;
        }
        const rows = typeof typed === 'string' ? NO_ROWS : typed;
        return <BenchRows key={field.name} {...place} field={field} rows={rows} />;
      })}
    </div>
  );
}

const NO_ROWS: readonly BenchForm[] = [];

interface BenchRowsProps extends FieldProps {
  readonly field: Field;
  readonly path: string;
  readonly rows: readonly BenchForm[];
}

const BenchRows = memo(function BenchRows({ field, path, rows, onField, ...rest }: BenchRowsProps) {
  const { t } = useTranslation('lead');
  const words = useBenchWords();
  const needId = useId();
  if (!('fields' in field.shape)) return null;
  const { fields, kind } = field.shape;
  const variants = field.shape.kind === 'group' ? field.shape.variants : undefined;
  const shown = (row: BenchForm | undefined) => fieldsShown(fields, variants, variants && row?.[variants.by]);
  const least = field.isNeeded ? 1 : 0;
  const onChange = (changed: readonly BenchForm[]) => onField(field.name, changed);
  return (
    <fieldset className="bench-rows" aria-describedby={rows.length > 0 ? needId : undefined}>
      <legend>{words.field(field.name)}</legend>
      {rows.length > 0 ? <NeedWords id={needId} fields={shown(rows[0])} decides={variants?.by} /> : null}
      {rows.map((row, index) => (
        // Rows carry nothing of their own; they are added and taken out at the end only.
        <BenchFields
          key={index}
          fields={shown(row)}
          form={row}
          path={kind === 'rows' ? `${path}[${index}].` : `${path}.`}
          onField={(name, typed) => onChange(rows.with(index, { ...row, [name]: typed }))}
          {...rest}
        />
      ))}
      {kind === 'rows' ? (
        <div className="actions">
          <Button onPress={() => onChange([...rows, blankForm(fields)])}>{t('bench.row-add')}</Button>
          <Button kind="quiet" isDisabled={rows.length <= least} onPress={() => onChange(rows.slice(0, -1))}>
            {t('bench.row-remove')}
          </Button>
        </div>
      ) : null}
    </fieldset>
  );
});
