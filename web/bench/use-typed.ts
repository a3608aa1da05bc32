import { type CalculationName, inputJsonSchema } from '@clampwright/core/calculations';
import type { Unit } from '@clampwright/core/quantity';
import { useCallback, useMemo, useState } from 'react';
import { useLanguage } from '../app/language.ts';
import { type Field, fieldsOf } from './fields.ts';
import { type BenchForm, blankForm, formFrom, type Hand, inOtherUnit, readForm } from './input.ts';
import { isRecord } from './is-record.ts';
import { type Units, unitsFrom, withUnit } from './units.ts';

interface Typed {
  readonly form: BenchForm;
  readonly units: Units;
}

/** What an address brought; anything. */
interface Brought {
  readonly firstInput: unknown;
  readonly firstUnits: unknown;
}

const NONE: readonly string[] = [];

/** What is typed, in which units, and what is read of it. The setters stay the same from drawing to drawing. */
export function useTyped(name: CalculationName, brought: Brought) {
  const language = useLanguage();
  const fields = useMemo(() => fieldsOf(inputJsonSchema(name)), [name]);
  const [{ form, units }, setTyped] = useState(() => firstTyped(fields, brought, language));
  const hand = useMemo(() => ({ language, units }), [language, units]);
  const { input, unreadable } = useMemo(() => readForm(fields, form, hand), [fields, form, hand]);
  const setField = useCallback((field: string, typed: BenchForm[string]) => {
    setTyped((before) => ({ ...before, form: { ...before.form, [field]: typed } }));
  }, []);
  const setUnit = useCallback(
    (field: string, unit: Unit) => {
      setTyped((before) => {
        const after = withUnit(before.units, field, unit);
        const [from, to]: [Hand, Hand] = [
          { language, units: before.units },
          { language, units: after },
        ];
        return { form: inOtherUnit(fields, before.form, field, from, to), units: after };
      });
    },
    [fields, language],
  );
  const setInput = (whole: Readonly<Record<string, unknown>>) =>
    setTyped({ form: formFrom(fields, whole, hand), units });
  return {
    fields,
    hand,
    form,
    input,
    unreadable: unreadable.length === 0 ? NONE : unreadable,
    setField,
    setUnit,
    setInput,
  };
}

function firstTyped(fields: readonly Field[], { firstInput, firstUnits }: Brought, language: Hand['language']): Typed {
  const units = unitsFrom(firstUnits);
  const form = isRecord(firstInput) ? formFrom(fields, firstInput, { language, units }) : blankForm(fields);
  return { form, units };
}
