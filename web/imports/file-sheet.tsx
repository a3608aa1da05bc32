import { useQuery } from '@tanstack/react-query';
import { useTranslation } from 'react-i18next';
import { Select } from '../parts/select.tsx';
import { Sheet } from '../parts/sheet.tsx';
import { Tick } from '../parts/tick.tsx';
import { DELIMITERS, ENCODINGS, type Mapping } from './mapping.ts';
import type { MappingForm } from './mapping-form.ts';
import { mappingsQuery } from './sending.ts';

interface FileSheetProps {
  readonly file: File;
  readonly form: MappingForm;
  readonly onChange: (form: MappingForm) => void;
  /** A saved mapping is wanted instead. */
  readonly onMapping: (mapping: Mapping) => void;
}

const DELIMITER_WORDS = { auto: 'auto', ';': 'semicolon', ',': 'comma', '\t': 'tab', '|': 'bar' } as const;
const SIGNS = ['comma', 'point'] as const;

/** How the file itself is written. */
export function FileSheet({ file, form, onChange, onMapping }: FileSheetProps) {
  const { t } = useTranslation('lead');
  const saved = useQuery(mappingsQuery);
  const set = (part: Partial<MappingForm>) => onChange({ ...form, ...part });
  return (
    <Sheet title={file.name}>
      <div className="field-row">
        {saved.data && saved.data.length > 0 ? (
          <Select
            label={t('import.saved')}
            value=""
            options={[
              { value: '', label: t('import.saved-none') },
              ...saved.data.map(({ name }) => ({ value: name, label: name })),
            ]}
            onChange={(name) => {
              const mapping = saved.data.find((one) => one.name === name);
              if (mapping) onMapping(mapping);
            }}
          />
        ) : null}
        <Select
          size="narrow"
          label={t('import.delimiter')}
          value={form.delimiter}
          options={DELIMITERS.map((value) => ({ value, label: t(`import.delimiter-${DELIMITER_WORDS[value]}`) }))}
          onChange={(delimiter) => set({ delimiter })}
        />
        <Select
          size="narrow"
          label={t('import.decimal')}
          value={form.decimalSign}
          options={SIGNS.map((value) => ({ value, label: t(`import.decimal-${value}`) }))}
          onChange={(decimalSign) => set({ decimalSign })}
        />
        <Select
          size="narrow"
          label={t('import.encoding')}
          value={form.encoding}
          options={ENCODINGS.map((value) => ({ value, label: value === 'auto' ? t('import.encoding-auto') : value }))}
          onChange={(encoding) => set({ encoding })}
        />
      </div>
      <Tick isChosen={form.headerRow} onChange={(headerRow) => set({ headerRow })}>
        {t('import.header-row')}
      </Tick>
    </Sheet>
  );
}
