import { z } from 'zod';
import { showNumber } from '../quantity/show-number.ts';

/** One line of a working, as an engineer writes it down to be checked. */
export const stepShownSchema = z.strictObject({
  symbol: z.string().describe('as the source writes it, such as δ_S'),
  formula: z.string().describe('in the letters of the source, such as l_K/(E_S·A_N)'),
  withNumbers: z.string().describe('the same with the numbers put in'),
  value: z.number().describe('what comes of it, unrounded'),
  unit: z.string().describe('unit of the value; empty for a plain number'),
  source: z.string().describe('where the formula stands'),
});
export type StepShown = z.infer<typeof stepShownSchema>;

interface Step {
  readonly symbol: string;
  readonly formula: string;
  /** What each letter of the formula stands for here; letters without a number stay. */
  readonly numbers: Readonly<Record<string, number>>;
  readonly value: number;
  readonly unit: string;
  readonly source: string;
}

const RAISED = '⁰¹²³⁴⁵⁶⁷⁸⁹';

const superscript = (exponent: string): string =>
  exponent.replace('-', '⁻').replace(/\d/g, (digit) => RAISED.charAt(Number(digit)));

/** A figure inside a formula: four significant digits, powers of ten where plain digits would hide it. */
function figure(value: number): string {
  const size = Math.abs(value);
  if (size !== 0 && (size < 1e-3 || size >= 1e7)) {
    const [mantissa = '', exponent = ''] = size.toExponential(3).split('e');
    return `${value < 0 ? '−' : ''}${mantissa}·10${superscript(exponent.replace('+', ''))}`;
  }
  return showNumber(Number(value.toPrecision(size >= 1000 ? 6 : 4)), 'en');
}

/** Without raised digits, which are exponents: `d_0` stands in `d_0²`. */
const LETTER = /[\p{L}_'′][\p{L}\p{Nd}₀-₉_,'′]*/gu;

/**
 * A formula with its numbers put in.
 *
 * @param step letters are taken whole: `d` does not stand in `d_w`
 * @returns the step ready to be shown; numbers in the formula are rounded, `value` is not
 */
export function shown({ numbers, ...step }: Step): StepShown {
  const withNumbers = step.formula.replace(LETTER, (letter) => {
    const number = numbers[letter];
    if (number === undefined) return letter;
    return number < 0 ? `(${figure(number)})` : figure(number);
  });
  return { ...step, withNumbers };
}
