import type { Failure, Result } from '@clampwright/core/failure';
import {
  checkTorque,
  HAND_TORQUE,
  type Language,
  likelyUnit,
  readNumber,
  type TorqueUnit,
} from '@clampwright/core/quantity';
import { type Fault, type FormFinding, faultAt } from './fault.ts';

/** Reads the fields of one form and gathers what is wrong with them; a value that cannot be had is `undefined`. */
export interface Reader {
  readonly language: Language;
  readonly faults: readonly Fault[];
  readonly fault: (field: string, finding: FormFinding | Failure) => undefined;
  /** A value that a room of the core read; its refusal is put at this place. */
  readonly take: <T>(place: string, result: Result<T>) => T | undefined;
  readonly number: (field: string, text: string, wants?: Wants) => number | undefined;
  /** A torque in N·m; one that makes no sense in its unit is a fault that names the likely slip. */
  readonly torqueNm: (field: string, text: string, unit: TorqueUnit) => number | undefined;
  readonly text: (field: string, text: string) => string | undefined;
}

/** What a figure must be. Limits are inclusive; `isPositive` is more than nothing. */
export interface Wants {
  readonly isWhole?: boolean;
  readonly isPositive?: boolean;
  readonly from?: number;
  readonly to?: number;
}

/** Begins the reading of a form in the language on screen. */
export function readerIn(language: Language): Reader {
  const faults: Fault[] = [];
  const fault: Reader['fault'] = (field, finding) => void faults.push({ field, finding });
  const take: Reader['take'] = (place, result) => {
    if (result.ok) return result.value;
    faults.push(faultAt(place, result.failure));
    return undefined;
  };
  const number: Reader['number'] = (field, text, wants = {}) => {
    if (text.trim() === '') return fault(field, { kind: 'needed' });
    const read = readNumber(text, language);
    if (!read.ok) return fault(field, { kind: 'number', text: text.trim() });
    const finding = unmet(read.value, wants);
    return finding ? fault(field, finding) : read.value;
  };
  const torqueNm: Reader['torqueNm'] = (field, text, unit) => {
    const torque = number(field, text, { from: 0 });
    if (torque === undefined) return undefined;
    const checked = checkTorque(torque, unit);
    if (checked.ok) return checked.value;
    return fault(field, { kind: 'torque', text: text.trim(), unit, meant: likelyUnit(torque, unit, HAND_TORQUE) });
  };
  const text: Reader['text'] = (field, typed) =>
    typed.trim() === '' ? fault(field, { kind: 'needed' }) : typed.trim();
  return { language, faults, fault, take, number, torqueNm, text };
}

function unmet(value: number, wants: Wants): FormFinding | undefined {
  const { isWhole = false, isPositive = false, from = isPositive ? 0 : -Infinity, to = Infinity } = wants;
  if (isWhole && (!Number.isInteger(value) || value < from || value > to)) return { kind: 'whole', from, to };
  if (isPositive && value <= 0) return { kind: 'positive' };
  return value < from || value > to ? { kind: 'between', from, to } : undefined;
}
