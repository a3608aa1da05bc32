import type { CalculationName } from '@clampwright/core/calculations';
import { useNavigate } from '@tanstack/react-router';
import { useEffect, useMemo, useState } from 'react';
import { useTranslation } from 'react-i18next';
import { Button } from '../parts/button.tsx';
import { Sheet } from '../parts/sheet.tsx';
import { BenchFields } from './bench-fields.tsx';
import { BenchParts } from './bench-parts.tsx';
import { BothWays } from './both-ways.tsx';
import { CopyButtons } from './copy-buttons.tsx';
import { exampleOf } from './example.ts';
import { partsOf } from './field-parts.ts';
import { broughtFrom } from './into-joint.ts';
import { NeedWords } from './need-words.tsx';
import { ResultFigures } from './result-figures.tsx';
import { ResultSheet } from './result-sheet.tsx';
import { SaveIntoJoint } from './save-into-joint.tsx';
import type { Units } from './units.ts';
import { useResult } from './use-result.ts';
import { useTyped } from './use-typed.ts';
import { Working } from './working.tsx';

interface CalculationSheetProps {
  readonly name: CalculationName;
  /** What the address brought; anything. */
  readonly firstInput: unknown;
  readonly firstUnits: unknown;
}

/** Inputs at the left, the result beside them, worked out with each key. */
export function CalculationSheet({ name, ...first }: CalculationSheetProps) {
  const { t } = useTranslation('lead');
  const { fields, hand, form, input, unreadable, setInput, setField, setUnit } = useTyped(name, first);
  const { result, isRough } = useResult(
    name,
    input,
    fields.some((field) => field.name === 'draws'),
  );
  useAddress(name, input, hand.units);
  const output = result.ok && unreadable.length === 0 ? result.value : undefined;
  const brought = broughtFrom(name, input, output);
  const parts = useMemo(() => partsOf(fields), [fields]);
  const failure = result.ok ? undefined : result.failure;
  const fieldProps = { form, hand, unreadable, failure, onField: setField, onUnit: setUnit };
  return (
    <div className="bench">
      <Sheet
        title={t('bench.input')}
        side={
          <Button kind="quiet" onPress={() => setInput(exampleOf(name))}>
            {t('bench.example')}
          </Button>
        }
      >
        <NeedWords fields={fields} />
        {parts ? <BenchParts parts={parts} {...fieldProps} /> : <BenchFields fields={fields} {...fieldProps} />}
      </Sheet>
      <div className="bench-result">
        <ResultSheet result={unreadable.length > 0 ? undefined : result} units={hand.units} onUnit={setUnit}>
          <CopyButtons name={name} input={input} output={output} units={hand.units} />
          {brought ? <SaveIntoJoint calculation={t(`bench.calc.${name}.name`)} brought={brought} /> : null}
        </ResultSheet>
        {output === undefined ? null : (
          <>
            <ResultFigures input={input} output={output} units={hand.units} />
            <BothWays output={output} units={hand.units} isRough={isRough} />
            <Working output={output} />
          </>
        )}
      </div>
    </div>
  );
}

const REST_MS = 600;

/** The address follows inputs and units once the hands rest: browsers count how often it is changed. */
function useAddress(name: CalculationName, input: Readonly<Record<string, unknown>>, units: Units): void {
  const navigate = useNavigate();
  const [first] = useState({ input, units });
  useEffect(() => {
    if (input === first.input && units === first.units) return;
    const search = Object.keys(units).length > 0 ? { input, units } : { input };
    const timer = setTimeout(() => {
      void navigate({ to: '/bench/$name', params: { name }, search, replace: true });
    }, REST_MS);
    return () => clearTimeout(timer);
  }, [name, input, units, first, navigate]);
}
