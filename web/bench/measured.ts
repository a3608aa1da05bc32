import { type Language, readNumber, showNumber } from '@clampwright/core/quantity';
import { isRecord } from './is-record.ts';

/** A figure as a calculation takes it: bare, or with its uncertainty. */
export type Measured =
  | number
  | { readonly value: number; readonly standardUncertainty: number; readonly distribution?: string };

/**
 * Reads `80`, `80 ± 1.6` or `80 ± 1.6 rectangular`: figure, standard uncertainty, distribution.
 *
 * @returns undefined when it cannot be read
 */
export function readMeasured(
  typed: string,
  distributions: readonly string[],
  language: Language,
): Measured | undefined {
  const [figure = '', scatter, ...more] = typed.split(/±|\+\/?-/);
  const value = readNumber(figure, language);
  if (!value.ok || more.length > 0) return undefined;
  if (scatter === undefined) return value.value;
  const distribution = distributions.find((name) => scatter.toLowerCase().trim().endsWith(name));
  const uncertainty = readNumber(
    scatter.trim().slice(0, scatter.trim().length - (distribution?.length ?? 0)),
    language,
  );
  if (!uncertainty.ok) return undefined;
  const told = { value: value.value, standardUncertainty: uncertainty.value };
  return distribution === undefined ? told : { ...told, distribution };
}

/** What is read back to the same; empty for what is no such figure. */
export function showMeasured(measured: unknown, language: Language): string {
  if (typeof measured === 'number') return showNumber(measured, language);
  if (!isRecord(measured) || typeof measured.value !== 'number') return '';
  const value = showNumber(measured.value, language);
  if (typeof measured.standardUncertainty !== 'number') return value;
  const scatter = `${value} ± ${showNumber(measured.standardUncertainty, language)}`;
  return typeof measured.distribution === 'string' ? `${scatter} ${measured.distribution}` : scatter;
}
