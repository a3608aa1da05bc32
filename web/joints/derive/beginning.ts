import { type Language, showNumber } from '@clampwright/core/quantity';
import type { DeriveChoices, DeriveForm } from './derive-form.ts';

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
  if (!isRecord(value)) return undefined;
  const thread = designationIn(value['thread']);
  if (thread === '') return undefined;
  const told = (names: readonly string[], kind: 'string' | 'number') =>
    Object.fromEntries(names.map((name) => [name, value[name]]).filter(([, figure]) => typeof figure === kind));
  return { thread, ...told(texts, 'string'), ...told(shares, 'number') };
}

/** Of an own bolt its designation, by which it is found again among the workshop's rows. */
function designationIn(thread: unknown): string {
  if (typeof thread === 'string') return thread;
  const designation = isRecord(thread) ? thread['designation'] : undefined;
  return typeof designation === 'string' ? designation : '';
}

/** The form of the dialog with what was brought along filled in. */
export function begunWith(
  form: DeriveForm,
  beginning: DeriveBeginning | undefined,
  { bolts }: Pick<DeriveChoices, 'bolts'>,
  language: Language,
): DeriveForm {
  if (!beginning) return form;
  const figure = (value: number | undefined, otherwise: string) =>
    value === undefined ? otherwise : showNumber(value, language);
  const { utilization } = beginning;
  return {
    ...form,
    thread: beginning.thread,
    bolt: bolts.find(({ name }) => name === beginning.thread)?.id ?? 'designation',
    strength: beginning.propertyClass === undefined ? form.strength : 'class',
    propertyClass: beginning.propertyClass ?? form.propertyClass,
    threadFriction: figure(beginning.threadFriction, form.threadFriction),
    bearingFriction: figure(beginning.bearingFriction, form.bearingFriction),
    utilizationPercent: figure(utilization && Math.round(utilization * 1000) / 10, form.utilizationPercent),
  };
}
