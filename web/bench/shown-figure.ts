import { type Language, showNumber } from '@clampwright/core/quantity';

/** Digits that mean something; what is copied carries all of them. */
const DIGITS = 6;
const SMALLEST = 1e-3;

const RAISED = '⁰¹²³⁴⁵⁶⁷⁸⁹';

/** A figure of a result; powers of ten where plain digits would be noughts only, as in a compliance. */
export function shownFigure(value: number, language: Language): string {
  const size = Math.abs(value);
  if (size !== 0 && size < SMALLEST) {
    const [mantissa = '', exponent = ''] = value.toExponential(3).split('e-');
    const raised = exponent.replace(/\d/g, (digit) => RAISED.charAt(Number(digit)));
    return `${showNumber(Number(mantissa), language)}·10⁻${raised}`;
  }
  return showNumber(Number(value.toPrecision(Math.max(DIGITS, Math.trunc(value).toString().length))), language);
}
