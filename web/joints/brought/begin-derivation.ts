import { type Language, showNumber } from '@clampwright/core/quantity';
import type { DeriveChoices, DeriveForm } from '../derive/derive-form.ts';
import { METHODS } from '../derive/methods.ts';
import type { Brought } from './brought.ts';

/** The form of the dialog with what was brought along filled in. */
export function begunWith(
  form: DeriveForm,
  brought: Brought | undefined,
  { bolts }: Pick<DeriveChoices, 'bolts'>,
  language: Language,
): DeriveForm {
  if (!brought) return form;
  const { thread, propertyClass, derive } = brought;
  const figure = (value: number | undefined, otherwise: string) =>
    value === undefined ? otherwise : showNumber(value, language);
  const utilization = derive?.utilization;
  return {
    ...form,
    thread,
    bolt: bolts.find(({ name }) => name === thread)?.id ?? 'designation',
    strength: propertyClass === undefined ? form.strength : 'class',
    propertyClass: propertyClass ?? form.propertyClass,
    threadFriction: figure(derive?.threadFriction, form.threadFriction),
    bearingFriction: figure(derive?.bearingFriction, form.bearingFriction),
    utilizationPercent: figure(utilization && Math.round(utilization * 1000) / 10, form.utilizationPercent),
    method: METHODS.find(({ row }) => row.method === derive?.tighteningMethod)?.value ?? form.method,
    tighteningFactor: figure(derive?.tighteningFactor, form.tighteningFactor),
  };
}
