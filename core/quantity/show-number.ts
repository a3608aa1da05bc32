import { type Language, NARROW_SPACE, NUMBER_STYLES } from './language.ts';

/** Either a fixed count of decimals, or at least so many significant digits; neither: every digit the number has. */
export interface Digits {
  readonly decimals?: number | undefined;
  readonly significant?: number | undefined;
}

const MOST_DECIMALS = 20;

/**
 * Shows a number in a language. From five digits on groups of three stand apart by narrow no-break spaces, in every
 * language, so that no shown figure carries a comma or point that another reader takes for the decimal sign.
 *
 * @param value    any finite number; a dash is shown for what is none
 * @param language whose decimal sign is used
 * @param digits   `significant` never rounds the digits before the decimal sign
 * @returns text that `readNumber` reads back to the figure shown
 */
export function showNumber(value: number, language: Language, digits: Digits = {}): string {
  if (!Number.isFinite(value)) return '–';
  const rounded = roundedText(Math.abs(value), digits);
  const [whole = '', fraction] = rounded.split('.');
  const sign = value < 0 && /[1-9]/.test(rounded) ? '\u2212' : '';
  const tail = fraction === undefined ? '' : `${NUMBER_STYLES[language].decimalSign}${fraction}`;
  return `${sign}${grouped(whole)}${tail}`;
}

function roundedText(size: number, { decimals, significant }: Digits): string {
  if (decimals !== undefined) return fixed(size, decimals);
  if (significant !== undefined) return fixed(size, decimalsFor(size, significant));
  return plainDecimal(size);
}

/** `toFixed` turns to exponents from 1e21 on. */
const fixed = (size: number, decimals: number): string =>
  size < 1e21 ? size.toFixed(Math.min(Math.max(decimals, 0), MOST_DECIMALS)) : plainDecimal(size);

function decimalsFor(size: number, significant: number): number {
  if (size === 0) return Math.max(significant - 1, 0);
  return significant - 1 - Number(size.toExponential(Math.max(significant - 1, 0)).split('e')[1]);
}

/** The shortest text that is this very number, written without an exponent. */
function plainDecimal(size: number): string {
  const [mantissa = '', exponent = '0'] = size.toString().split('e');
  const [whole = '', fraction = ''] = mantissa.split('.');
  const shift = Number(exponent);
  if (shift === 0) return mantissa;
  if (shift > 0) return `${whole}${fraction}`.padEnd(whole.length + shift, '0');
  return `0.${'0'.repeat(-shift - 1)}${whole}${fraction}`;
}

const grouped = (whole: string): string => (whole.length < 5 ? whole : whole.replace(/\B(?=(\d{3})+$)/g, NARROW_SPACE));
