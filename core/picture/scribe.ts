import { convert } from '../quantity/convert.ts';
import type { Language } from '../quantity/language.ts';
import { showNumber } from '../quantity/show-number.ts';
import type { Unit } from '../quantity/unit.ts';

/** How the figures of a picture are written: decimal sign, units and the words for what only its reader can name. */
export interface Scribe {
  readonly language: Language;
  /** Units chosen in place of a field's own, by the field's name, such as `torqueNm`. */
  readonly units: Readonly<Record<string, Unit>>;
  /** What a field of a calculation is called. */
  readonly field: (name: string) => string;
  /** A word that a calculation gives, such as `shank`. */
  readonly value: (text: string) => string;
}

/** One quantity as the pictures show it. */
export interface Measure {
  readonly unit: string;
  /** From the calculation's own unit into the one shown. */
  readonly of: (value: number) => number;
  /** With its unit, to four digits. */
  readonly show: (value: number) => string;
}

const DIGITS = 4;

/** A figure without a unit, to four digits. */
export const shortFigure = (value: number, language: Language): string =>
  showNumber(Number(value.toPrecision(DIGITS)), language);

function measure(own: Unit, shown: Unit, language: Language): Measure {
  const of = (value: number): number => {
    const converted = convert(value, own, shown);
    return converted.ok ? converted.value : value;
  };
  const unit = shown === 'deg' ? '°' : shown;
  const before = shown === 'deg' ? '' : '\u00a0';
  const figure = (value: number) => shortFigure(of(value), language);
  return { unit, of, show: (value) => `${figure(value)}${before}${unit}` };
}

type Writing = Pick<Scribe, 'language' | 'units'>;

/** Forces are shown in kilonewtons unless another unit was chosen: a preload has five digits in newtons. */
export const forces = ({ language, units }: Writing): Measure => measure('N', units['preloadN'] ?? 'kN', language);
export const torques = ({ language, units }: Writing): Measure => measure('N·m', units['torqueNm'] ?? 'N·m', language);
export const angles = ({ language, units }: Writing): Measure => measure('deg', units['angleDeg'] ?? 'deg', language);
