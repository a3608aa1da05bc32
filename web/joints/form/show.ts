import { type AngleWindow, readWindow, type TorqueWindow, type TypedWindow } from '@clampwright/core/procedure';
import { LANGUAGES, type Language, readNumber, showNumber } from '@clampwright/core/quantity';
import { blankWindow } from './blank.ts';
import type { WindowForm } from './joint-form.ts';

/** A typed figure from one language to another, as many decimals as were typed. */
function retyped(text: string, from: Language, to: Language): string {
  if (from === to) return text;
  const read = readNumber(text, from);
  if (!read.ok) return text;
  const sign = showNumber(0.5, from).charAt(1);
  return showNumber(read.value, to, { decimals: text.split(sign)[1]?.length ?? 0 });
}

/**
 * A kept window as it stands in the editor. What was typed is shown as typed when the language on screen reads the
 * same figures from it; typed in another language, its decimal signs are exchanged.
 */
export const torqueWindowForm = (window: TorqueWindow, language: Language): WindowForm =>
  windowForm(
    window.typed,
    languageOf(window.typed, language, (typed, spoken) => isSameTorque(window, typed, spoken)),
    language,
  );

export const angleWindowForm = (window: AngleWindow, language: Language): WindowForm =>
  windowForm(
    window.typed,
    languageOf(window.typed, language, (typed, spoken) => isSameAngle(window, typed, spoken)),
    language,
  );

type Reads = (typed: TypedWindow, language: Language) => boolean;

const languageOf = (typed: TypedWindow, first: Language, reads: Reads): Language =>
  [first, ...LANGUAGES].find((language) => reads(typed, language)) ?? first;

function isSameTorque(window: TorqueWindow, typed: TypedWindow, language: Language): boolean {
  const read = readWindow(typed, 'torque', language);
  return read.ok && read.value.lowerNm === window.lowerNm && read.value.upperNm === window.upperNm;
}

function isSameAngle(window: AngleWindow, typed: TypedWindow, language: Language): boolean {
  const read = readWindow(typed, 'angle', language);
  return read.ok && read.value.lowerDeg === window.lowerDeg && read.value.upperDeg === window.upperDeg;
}

function windowForm(typed: TypedWindow, from: Language, to: Language): WindowForm {
  const text = (figure: string) => retyped(figure, from, to);
  const blank = { ...blankWindow(typed.unit), form: typed.form };
  switch (typed.form) {
    case 'percent':
      return { ...blank, target: text(typed.target), percent: text(typed.percent) };
    case 'plus-minus':
      return { ...blank, target: text(typed.target), plusMinus: text(typed.plusMinus) };
    case 'limits':
      return { ...blank, lower: text(typed.lower), upper: text(typed.upper) };
  }
}
