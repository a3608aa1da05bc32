import type { LineField, LineKind } from '@clampwright/core/line';
import { useTranslation } from 'react-i18next';
import { Button } from '../parts/button.tsx';
import { Select } from '../parts/select.tsx';
import { TextField } from '../parts/text-field.tsx';
import { MEANINGS, type Meaning, meaningOf } from './line-form.ts';

const SAYS = ['result', 'sample', 'other'] as const satisfies readonly LineKind['says'][];
const isMeaning = (name: string): name is Meaning => Object.hasOwn(MEANINGS, name);
const ALL_MEANINGS = Object.keys(MEANINGS).filter(isMeaning);

interface LineKindsProps {
  readonly lines: readonly LineKind[];
  readonly onChange: (lines: readonly LineKind[]) => void;
}

/** Each kind of line with what its fields mean. */
export function LineKinds({ lines, onChange }: LineKindsProps) {
  const { t } = useTranslation('lead');
  const put = (at: number, line: LineKind) => onChange(lines.map((other, i) => (i === at ? line : other)));
  return (
    <>
      {lines.map((line, at) => (
        // Lines have no identity of their own; they are added and removed at the end or one by one.
        <fieldset key={at} className="line-kind">
          <legend>{t('lines.line', { number: at + 1 })}</legend>
          <Select
            label={t('lines.says')}
            value={line.says}
            options={SAYS.map((value) => ({ value, label: t(`lines.says-${value}`) }))}
            onChange={(says) => put(at, { ...line, says })}
          />
          <LineFields line={line} onChange={(fields) => put(at, { ...line, fields })} />
          {lines.length > 1 ? (
            <Button kind="quiet" onPress={() => onChange(lines.filter((_, i) => i !== at))}>
              {t('lines.remove-line')}
            </Button>
          ) : null}
        </fieldset>
      ))}
      <Button onPress={() => onChange([...lines, { says: 'other', fields: [{ means: 'passed-over' }] }])}>
        {t('lines.add-line')}
      </Button>
    </>
  );
}

interface LineFieldsProps {
  readonly line: LineKind;
  readonly onChange: (fields: LineField[]) => void;
}

function LineFields({ line: { fields }, onChange }: LineFieldsProps) {
  const { t } = useTranslation('lead');
  const put = (at: number, field: LineField) => onChange(fields.map((other, i) => (i === at ? field : other)));
  return (
    <>
      <div className="field-row">
        {fields.map((field, at) => (
          <span key={at} className="line-field">
            <Select
              label={t('lines.field', { number: at + 1 })}
              value={meaningOf(field)}
              options={ALL_MEANINGS.map((value) => ({ value, label: t(`lines.means-${value}`) }))}
              onChange={(meaning) => put(at, MEANINGS[meaning])}
            />
            {field.means === 'mark' ? (
              <TextField
                size="narrow"
                label={t('lines.mark-text')}
                value={field.text}
                onChange={(text) => put(at, { means: 'mark', text })}
              />
            ) : null}
          </span>
        ))}
      </div>
      <span className="device-acts">
        <Button onPress={() => onChange([...fields, { means: 'passed-over' }])}>{t('lines.add-field')}</Button>
        {fields.length > 1 ? (
          <Button kind="quiet" onPress={() => onChange(fields.slice(0, -1))}>
            {t('lines.remove-field')}
          </Button>
        ) : null}
      </span>
    </>
  );
}
