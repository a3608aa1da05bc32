import { convert, type Language, showNumber, type Unit } from '@clampwright/core/quantity';
import type lead from '../../words/lead.en.json';
import type { Units } from '../units.ts';

export type PlotWord = keyof (typeof lead)['bench']['plot'];

/** How the figures of a plot are written: words of the catalogue, units and decimal sign of the screen. */
export interface Scribe {
  readonly language: Language;
  readonly units: Units;
  readonly say: (word: PlotWord) => string;
  readonly field: (name: string) => string;
  /** A word that a calculation gives, such as `shank`. */
  readonly value: (text: string) => string;
}

/** One quantity as the plots show it. */
export interface Measure {
  readonly unit: string;
  /** From the calculation's own unit into the one shown. */
  readonly of: (value: number) => number;
  /** With its unit, to four digits. */
  readonly show: (value: number) => string;
}

const DIGITS = 4;

export const shortFigure = (value: number, language: Language): string =>
  showNumber(Number(value.toPrecision(DIGITS)), language);

function measure(own: Unit, shown: Unit, language: Language): Measure {
  const of = (value: number): number => {
    const converted = convert(value, own, shown);
    return converted.ok ? converted.value : value;
  };
  const unit = shown === 'deg' ? '°' : shown;
  return { unit, of, show: (value) => `${shortFigure(of(value), language)} ${unit}` };
}

/** Forces are shown in kilonewtons unless another unit was chosen: a preload has five digits in newtons. */
export const forces = ({ language, units }: Scribe): Measure => measure('N', units['preloadN'] ?? 'kN', language);
export const torques = ({ language, units }: Scribe): Measure => measure('N·m', units['torqueNm'] ?? 'N·m', language);
export const angles = ({ language, units }: Scribe): Measure => measure('deg', units['angleDeg'] ?? 'deg', language);
