import type { ReactNode } from 'react';
import { useTranslation } from 'react-i18next';
import { Select } from '../parts/select.tsx';
import { Sheet } from '../parts/sheet.tsx';
import { ROLES } from './mapping.ts';
import { type MappingForm, type Missing, withRole } from './mapping-form.ts';
import { MeaningFields } from './meaning-fields.tsx';

interface ColumnsSheetProps {
  readonly form: MappingForm;
  readonly missing: readonly Missing[];
  readonly onChange: (form: MappingForm) => void;
  readonly children: ReactNode;
}

/** How many of the first cells are shown of a column. */
const SHOWN = 4;

/** What each column means, told once. A verdict in the file is never read: pulls are judged here. */
export function ColumnsSheet({ form, missing, onChange, children }: ColumnsSheetProps) {
  const { t } = useTranslation('lead');
  return (
    <Sheet title={t('import.columns')}>
      <p className="soft">{t('import.columns-about')}</p>
      <ol className="file-columns">
        {form.columns.map((column, index) => (
          <li key={index} className={column.role === 'none' ? 'file-column file-column-unused' : 'file-column'}>
            <div>
              <p className="file-column-name">{column.name || t('import.column', { number: index + 1 })}</p>
              <p className="file-column-cells">{column.cells.slice(0, SHOWN).join(' · ')}</p>
            </div>
            <Select
              label={t('import.role-of', { column: column.name || t('import.column', { number: index + 1 }) })}
              value={column.role}
              options={ROLES.map((value) => ({ value, label: t(`import.role.${value}`) }))}
              onChange={(role) => onChange(withRole(form, index, role))}
            />
          </li>
        ))}
      </ol>
      <MeaningFields form={form} onChange={onChange} />
      {missing.length > 0 ? (
        <ul className="place-problems" aria-live="polite">
          {missing.map((what) => (
            <li key={what} className="field-problem">
              {t(`import.missing.${what}`)}
            </li>
          ))}
        </ul>
      ) : null}
      {children}
    </Sheet>
  );
}
