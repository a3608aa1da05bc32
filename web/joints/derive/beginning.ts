import { type Language, showNumber } from '@clampwright/core/quantity';
import type { DeriveForm } from './derive-form.ts';

/** What a calculation on Bench brings along to begin a derivation with. */
export interface DeriveBeginning {
  readonly thread: string;
  readonly propertyClass?: string;
  readonly threadFriction?: number;
  readonly bearingFriction?: number;
  readonly utilization?: number;
}

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null;

const texts = ['propertyClass'] as const;
const shares = ['threadFriction', 'bearingFriction', 'utilization'] as const;

/**
 * Reads a beginning out of what an address or the inputs of a calculation hold; undefined where no thread is told.
 * What is not of its kind is left out: the dialog asks for it.
 */
export function beginningFrom(value: unknown): DeriveBeginning | undefined {
  if (!isRecord(value) || typeof value['thread'] !== 'string' || value['thread'] === '') return undefined;
  const told = (names: readonly string[], kind: 'string' | 'number') =>
    Object.fromEntries(names.map((name) => [name, value[name]]).filter(([, figure]) => typeof figure === kind));
  return { thread: value['thread'], ...told(texts, 'string'), ...told(shares, 'number') };
}

/** The form of the dialog with what was brought along filled in. */
export function begunWith(form: DeriveForm, beginning: DeriveBeginning | undefined, language: Language): DeriveForm {
  if (!beginning) return form;
  const figure = (value: number | undefined, otherwise: string) =>
    value === undefined ? otherwise : showNumber(value, language);
  const { utilization } = beginning;
  return {
    ...form,
    thread: beginning.thread,
    propertyClass: beginning.propertyClass ?? form.propertyClass,
    threadFriction: figure(beginning.threadFriction, form.threadFriction),
    bearingFriction: figure(beginning.bearingFriction, form.bearingFriction),
    utilizationPercent: figure(utilization && Math.round(utilization * 1000) / 10, form.utilizationPercent),
  };
}
