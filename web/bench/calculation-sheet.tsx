import { type CalculationName, calculate, inputJsonSchema } from '@clampwright/core/calculations';
import { useNavigate } from '@tanstack/react-router';
import { useEffect, useMemo, useState } from 'react';
import { useTranslation } from 'react-i18next';
import { useLanguage } from '../app/language.ts';
import { Button } from '../parts/button.tsx';
import { Sheet } from '../parts/sheet.tsx';
import { BenchFields } from './bench-fields.tsx';
import { CopyButtons } from './copy-buttons.tsx';
import { exampleOf } from './example.ts';
import { fieldsOf } from './fields.ts';
import { blankForm, formFrom, readForm } from './input.ts';
import { isRecord } from './is-record.ts';
import { ResultSheet } from './result-sheet.tsx';

interface CalculationSheetProps {
  readonly name: CalculationName;
  /** What the address brought; anything. */
  readonly firstInput: unknown;
}

/** Inputs at the left, the result beside them, worked out with each key. */
export function CalculationSheet({ name, firstInput }: CalculationSheetProps) {
  const { t } = useTranslation('lead');
  const language = useLanguage();
  const fields = useMemo(() => fieldsOf(inputJsonSchema(name)), [name]);
  const [form, setForm] = useState(() =>
    isRecord(firstInput) ? formFrom(fields, firstInput, language) : blankForm(fields),
  );
  const { input, unreadable } = useMemo(() => readForm(fields, form, language), [fields, form, language]);
  const result = useMemo(() => calculate(name, input), [name, input]);
  useAddress(name, input);
  return (
    <div className="bench">
      <Sheet
        title={t('bench.input')}
        side={
          <Button kind="quiet" onPress={() => setForm(formFrom(fields, exampleOf(name), language))}>
            {t('bench.example')}
          </Button>
        }
      >
        <BenchFields
          fields={fields}
          form={form}
          unreadable={unreadable}
          failure={result.ok ? undefined : result.failure}
          onChange={setForm}
        />
      </Sheet>
      <div className="bench-result">
        <ResultSheet result={unreadable.length > 0 ? undefined : result} />
        {result.ok && unreadable.length === 0 ? <CopyButtons name={name} input={input} output={result.value} /> : null}
      </div>
    </div>
  );
}

const REST_MS = 600;

/** The address follows the inputs once the hands rest: browsers count how often it is changed. */
function useAddress(name: CalculationName, input: Readonly<Record<string, unknown>>): void {
  const navigate = useNavigate();
  const [first] = useState(input);
  useEffect(() => {
    if (input === first) return;
    const timer = setTimeout(() => {
      void navigate({ to: '/bench/$name', params: { name }, search: { input }, replace: true });
    }, REST_MS);
    return () => clearTimeout(timer);
  }, [name, input, first, navigate]);
}
