import {
  checkTorque,
  HAND_TORQUE,
  type Language,
  likelyUnit,
  readNumber,
  type TorqueUnit,
} from '@clampwright/core/quantity';

/** Why a typed figure is not taken, as data; the catalogue says it in the language on screen. */
export type FigureFault =
  | { readonly kind: 'not-read'; readonly text: string }
  /** Two people would read two figures. */
  | { readonly kind: 'ambiguous'; readonly text: string; readonly whole: number; readonly decimal: number }
  | { readonly kind: 'negative'; readonly text: string }
  /** Makes no sense in its unit; `meant` is the unit that it likely was in. */
  | {
      readonly kind: 'absurd';
      readonly text: string;
      readonly unit: TorqueUnit;
      readonly meant: TorqueUnit | undefined;
    };

/** One comma or point before exactly three digits. */
const EITHER_WAY = /^([1-9]\d{0,2})[.,](\d{3})$/;

/** What is wrong with a typed number; undefined where it can be read. */
export function numberFault(typed: string, language: Language): FigureFault | undefined {
  if (readNumber(typed, language).ok) return undefined;
  const text = typed.trim();
  const [, before, after] = EITHER_WAY.exec(text) ?? [];
  if (before === undefined || after === undefined) return { kind: 'not-read', text };
  return { kind: 'ambiguous', text, whole: Number(before + after), decimal: Number(`${before}.${after}`) };
}

/** What is wrong with a typed torque; undefined where it can be read and makes sense. */
export function torqueFault(typed: string, unit: TorqueUnit, language: Language): FigureFault | undefined {
  const read = readNumber(typed, language);
  if (!read.ok) return numberFault(typed, language);
  const text = typed.trim();
  if (read.value < 0) return { kind: 'negative', text };
  if (checkTorque(read.value, unit).ok) return undefined;
  return { kind: 'absurd', text, unit, meant: likelyUnit(read.value, unit, HAND_TORQUE) };
}
